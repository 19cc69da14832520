import { between, type Eye } from "./camera.ts";

/** An eye that glides from where it is to where it is sent. */
export interface Gliding {
  now: Eye;
  /** Glides there; at once for those who asked for less motion. */
  to(eye: Eye): void;
  /** Is there at once, and stops gliding. */
  at(eye: Eye): void;
}

/** ms */
const GLIDE = 320;

export function gliding(start: Eye, moved: () => void): Gliding {
  let run = 0;
  const eye: Gliding = {
    now: start,
    at(next) {
      run++;
      eye.now = next;
      moved();
    },
    to(next) {
      if (matchMedia("(prefers-reduced-motion: reduce)").matches) {
        eye.at(next);
        return;
      }
      const [from, mine, begun] = [eye.now, ++run, performance.now()];
      const step = (time: number): void => {
        if (mine !== run) return;
        const t = Math.min(1, Math.max(0, (time - begun) / GLIDE));
        eye.now = between(from, next, t);
        moved();
        if (t < 1) requestAnimationFrame(step);
      };
      step(begun);
    },
  };
  return eye;
}
