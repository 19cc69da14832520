import type { Response } from "./response.ts";

/** Why rules that look at the response cannot decide; said alike by all of them, so that it is told once. */
export function whyNotSolved(response: Response): string {
  switch (response.kind) {
    case "solved":
      return "";
    case "loose":
      return "because of frame.loose: a part of the frame moves freely";
    case "lacking":
      return response.why;
  }
}
