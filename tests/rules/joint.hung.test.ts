import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/joint.hung.ts";
import { barOf, tee } from "./base-frames.ts";

/** A loaded rail, its top at z = 520, on a post that runs on to 1000: nothing to sit on. */
function base(): FrameFile {
  return { ...tee(), loads: [{ case: "shelf", on: "rail", force: 100 }] };
}

function postTop(z: number): (file: FrameFile) => void {
  return (file) => {
    barOf(file, "post").to = [0, 0, z];
  };
}

it("joint.hung: a loaded rail beside a post that could end under it", () => {
  const wrong = proveRule(rule, base(), [
    { title: "flush with the post's top", edit: postTop(520), finds: [{ at: "rail.from", key: "hung" }] },
    { title: "the post one rail higher", edit: postTop(559), finds: [{ at: "rail.from", key: "hung" }] },
    { title: "the post higher than that", edit: postTop(561), finds: [] },
    {
      title: "nothing on the rail",
      edit: (file) => {
        postTop(520)(file);
        file.loads = [{ case: "shelf", on: "post", force: 100 }];
      },
      finds: [],
    },
    {
      // A sill under the rail, 90 mm from its end: less than a quarter of 580 mm.
      title: "a sill under the rail",
      edit: (file) => {
        postTop(520)(file);
        file.bars.push({ id: "sill", profile: "40x40-8", from: [110, -200, 460], to: [110, 200, 460] });
      },
      finds: [],
    },
    {
      // At 200 mm from the end it props the rail, and does not seat its end.
      title: "a prop further along",
      edit: (file) => {
        postTop(520)(file);
        file.bars.push({ id: "sill", profile: "40x40-8", from: [220, -200, 460], to: [220, 200, 460] });
      },
      finds: [{ at: "rail.from", key: "hung" }],
    },
    {
      title: "a beam across the top of the post",
      edit: (file) => {
        postTop(520)(file);
        file.bars.push({ id: "beam", profile: "40x40-8", from: [0, -200, 540], to: [0, 200, 540] });
      },
      finds: [],
    },
  ]);
  expect(wrong).toEqual([]);
});
