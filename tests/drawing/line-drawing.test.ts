import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { lineDrawing } from "../../src/drawing/line-drawing.ts";
import { sceneOf } from "../../src/drawing/scene.ts";
import { type View, views } from "../../src/drawing/view.ts";
import type { Frame } from "../../src/model/frame.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { frameOf } from "../facts/known.ts";
import { edited, tee } from "../rules/base-frames.ts";
import { pathPoints } from "./path-points.ts";

const demo = (name: string): Frame =>
  frameOf(
    JSON.parse(readFileSync(new URL(`../../docs/demo/${name}.frame.json`, import.meta.url), "utf8")) as FrameFile,
  );
const draw = (frame: Frame, view: View = views.isometric): string =>
  lineDrawing(sceneOf(frame), { view, size: [800, 600], title: frame.title });
const partsIn = (svg: string): readonly string[] =>
  [...svg.matchAll(/data-part="([^"]*)"/g)].map(([, part = ""]) => part);

describe("the line drawing of a frame", () => {
  it("holds every bar, panel and stand, and the connectors with their screws", () => {
    const frame = demo("potting-bench");
    const parts = new Set(partsIn(draw(frame)));
    for (const { ref } of [...frame.bars, ...frame.panels, ...frame.stands])
      expect(parts).toContain(`${ref.kind} ${ref.id}`);
    expect(parts).toContain("connector leg-1.to/1");
    expect(parts).toContain("screw leg-1.to/1/a1");
  });

  it("is to scale: from the front the tee's post is 40 mm wide and its rail 1000 mm long", () => {
    const frame = frameOf(tee());
    const svg = draw(frame, views.front);
    const extent = (id: string, axis: 0 | 1): number => {
      const [, group = ""] = new RegExp(`data-part="bar ${id}"[^>]*>(.*?)</g>`).exec(svg) ?? [];
      const paths = [...group.matchAll(/ d="([^"]*)"/g)].map(([, d = ""]) => d);
      const at = paths.flatMap(pathPoints).flatMap((ring) => ring.map((pair) => pair[axis]));
      return Math.max(...at) - Math.min(...at);
    };
    const rail = frame.bars.find((bar) => bar.ref.id === "rail");
    if (!rail) throw new Error("no rail");
    // The rail is cut at the post's face, 20 mm from its drawn point.
    const length = rail.to[0] - rail.from[0] - 0.02;
    // Points are told to a tenth of a picture unit, a width so to two.
    expect(Math.abs((extent("rail", 0) * 0.04) / length - extent("post", 0))).toBeLessThan(0.21);
  });

  it("shows the true outline of the profile at a sawn end: as many points as the section has", () => {
    const frame = frameOf(tee());
    const [bar] = frame.bars;
    const [, d = ""] = /<path d="(M[^"]*M[^"]*)"/.exec(draw(frame)) ?? [];
    expect(bar?.profile.region.outer.length).toBeGreaterThan(40);
    expect(pathPoints(d)[0]).toHaveLength(bar?.profile.region.outer.length ?? 0);
  });

  it("draws bars that run into each other once more in outline", () => {
    const svg = draw(demo("potting-bench-faulty"));
    expect([...svg.matchAll(/data-outline="([^"]*)"/g)].map(([, part]) => part)).toEqual([]);
    const crossed = frameOf(
      edited(tee(), (file) => {
        file.bars.push({
          ...(file.bars[1] as FrameFile["bars"][number]),
          id: "through",
          from: [100, 0, 300],
          to: [-100, 0, 300],
          ends: { from: { cut: "as-drawn" }, to: { cut: "as-drawn" } },
        } as FrameFile["bars"][number]);
      }),
    );
    expect([...draw(crossed).matchAll(/data-outline="([^"]*)"/g)].map(([, part]) => part).sort()).toEqual([
      "bar post",
      "bar through",
    ]);
  });

  it("hides, holds back and brings out parts without changing the scale", () => {
    const scene = sceneOf(demo("potting-bench"));
    const whole = lineDrawing(scene, { view: views.isometric, size: [800, 600], title: "" });
    const part = lineDrawing(scene, {
      view: views.isometric,
      size: [800, 600],
      title: "",
      look: ({ of }) => (of.id === "leg-1" ? "plain" : "hidden"),
    });
    expect(partsIn(part)).toEqual(["bar leg-1"]);
    expect(whole).toContain(part.split("\n").find((line) => line.includes("bar leg-1")) ?? "?");
  });

  it("is inert: no script, no style, nothing fetched; names of any kind are text", () => {
    const hostile = `"><script>alert('1')</script>\u202e`;
    const svg = lineDrawing(sceneOf(frameOf(tee())), {
      view: views.front,
      size: [400, 400],
      title: hostile,
      marks: [{ at: [0, 0, 0], word: hostile }],
    });
    expect(svg).not.toMatch(/<script|<style|style=|href|url\(|\son\w+=|\u202e/);
    expect(svg).toContain("&lt;script&gt;");
    expect(svg).toContain("\\u202e");
    expect(svg.replaceAll("http://www.w3.org/2000/svg", "")).not.toContain("//");
  });
});
