import { describe, expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/panel.misfit.ts";
import { barOf } from "./base-frames.ts";
import { pane, paneled } from "./panel-frames.ts";

const GROWS = (65e-6 - 23e-6) * 15;

/**
 * The right triangle between left, bottom and the stay, mm. Its middle lies at (1000/3, 1000/3): the mean of the middles of its three
 * edges, (0, 500), (500, 0) and (500, 500). From there its floors lie away by 1000/3 − 20 + 10.5 to the left and below; to the stay
 * (1000 − 2000/3)/√2 − 20 + 10.5. Sawn to leave 0.25 mm at each when grown, 0.5 mm small, shrunk: play all round of 1000/3 and 235.7 mm
 * less that. Pushed from the stay into the square corner it goes back by √2 times the play there.
 */
const TRIANGLE = (() => {
  const [leg, stay] = [1000 / 3 - 20 + 10.5, (1000 - 2000 / 3) / Math.SQRT2 - 20 + 10.5];
  const small = (floor: number): number => ((floor - 0.25) / (1 + GROWS) - 0.5 - 0.5) * (1 - GROWS);
  const play = (floor: number): number => floor - small(floor);
  const fromStay = 10.5 - play(stay) - Math.SQRT2 * play(leg);
  // Pushed from the left: along the bottom until the stay's slot is met, on the floor of the bottom slot.
  const fromLeft = 10.5 - play(leg) - (Math.SQRT2 * play(stay) + play(leg));
  return Math.min(fromStay, fromLeft);
})();

function sized(width: number): (file: FrameFile) => void {
  return pane((panel) => {
    panel.size = [width, 976];
  });
}

function sheet(name: string, gasket = true): (file: FrameFile) => void {
  return pane((panel) => {
    panel.sheet = name;
    if (!gasket) delete panel.gasket;
  });
}

/** Moves a bar out of the plane, mm. */
function aside(by: number): (file: FrameFile) => void {
  return (file) => {
    const bar = barOf(file, "top");
    bar.from = [0, by, 1000];
    bar.to = [1000, by, 1000];
  };
}

function rolled(degrees: number): (file: FrameFile) => void {
  return (file) => {
    barOf(file, "top").roll = degrees;
  };
}

function with_(edit: (file: FrameFile) => void, criteria: Record<string, string>): (file: FrameFile) => void {
  return (file) => {
    edit(file);
    file.criteria = criteria;
  };
}

const says = (key: string, measured?: number) => [{ at: "pane", key, ...(measured === undefined ? {} : { measured }) }];

describe("panel.misfit", () => {
  it("finds panels that do not fit their slots", () => {
    const wrong = proveRule(rule, paneled(), [
      // From strip to strip 960 + 2 · 10.5 = 981 mm. Sawn 1 mm small, shrunk, and at one floor: what is left on the other side.
      { title: "just enough stays in the slot", edit: sized(975.2), finds: [] },
      {
        title: "too little stays in the slot",
        edit: sized(975),
        finds: says("slips", ((975 - 1) * (1 - GROWS) - 960 - 10.5) / 1000),
      },
      {
        title: "comes out",
        edit: sized(970),
        finds: says("slips", ((970 - 1) * (1 - GROWS) - 960 - 10.5) / 1000),
      },
      {
        title: "more asked for",
        edit: with_(sized(975.2), { "panel-engagement": "3.5 mm" }),
        finds: says("slips", ((975.2 - 1) * (1 - GROWS) - 960 - 10.5) / 1000),
      },
      { title: "just room to grow", edit: sized(978.8), finds: [] },
      {
        title: "no room to grow",
        edit: sized(979),
        finds: says("jams", (981 - (979 + 1) * (1 + GROWS)) / 1000),
      },
      {
        title: "more room asked for",
        edit: with_(sized(978.8), { "panel-room": "1 mm" }),
        finds: says("jams", (981 - (978.8 + 1) * (1 + GROWS)) / 1000),
      },
      {
        title: "in a place that gets hotter",
        edit: (file) => {
          sized(978)(file);
          file.site = { temperature: [5, 60] };
        },
        finds: says("jams", (981 - (978 + 1) * (1 + (65e-6 - 23e-6) * 40)) / 1000),
      },
      { title: "larger than the slots", edit: sized(981.5), finds: says("large", 0.9815) },
      {
        // 0.6 % from dry to damp, half of it either way outdoors.
        title: "a laminate that swells outdoors",
        edit: (file) => {
          sized(978)(file);
          sheet("hpl-5")(file);
          file.site = { place: "outdoors", temperature: [20, 20] };
        },
        finds: [
          { at: "pane", key: "jams", measured: (981 - (978 + 1) * 1.003) / 1000 },
          { at: "pane", key: "slips", measured: ((976 - 1) * 0.997 - 970.5) / 1000 },
        ],
      },
      {
        title: "the strip left out: the slots are deeper than it was cut for",
        edit: (file) => {
          sized(976)(file);
          sheet("polycarbonate-5", false)(file);
        },
        finds: Array.from({ length: 2 }, () => ({
          at: "pane",
          key: "slips",
          measured: ((976 - 1) * (1 - GROWS) - 960 - 12.5) / 1000,
        })),
      },
      { title: "a sheet that just fills a bare slot", edit: sheet("polycarbonate-8", false), finds: [] },
      {
        title: "more room asked for beside it",
        edit: with_(sheet("polycarbonate-8", false), { "slot-clearance": "0.3 mm" }),
        finds: says("thick", 0.0002),
      },
      { title: "a sheet thicker than the slot", edit: sheet("polycarbonate-10", false), finds: says("thick", -0.0018) },
      { title: "a sheet the strip does not grip", edit: sheet("polycarbonate-3"), finds: says("thin", 0.003) },
      { title: "a sheet the strip does not take", edit: sheet("polycarbonate-8"), finds: says("tight", 0.008) },
      {
        title: "a strip for other slots",
        edit: pane((panel) => {
          panel.gasket = "strip-10";
        }),
        finds: says("strip"),
      },
      { title: "a bar a little out of the plane", edit: aside(0.95), finds: [] },
      { title: "a bar out of the plane", edit: aside(1.5), finds: says("off", 0.0015) },
      {
        title: "a bar less out of the plane than allowed there",
        edit: with_(aside(1.5), { "panel-offset": "2 mm" }),
        finds: [],
      },
      { title: "a bar turned a little", edit: rolled(1.95), finds: [] },
      { title: "a bar turned", edit: rolled(2.05), finds: says("turned", (2.05 * Math.PI) / 180) },
      { title: "a bar turned, allowed", edit: with_(rolled(2.05), { "slot-turn": "3 deg" }), finds: [] },
      {
        title: "a bar whose slot there is closed",
        edit: (file) => {
          const bar = barOf(file, "bottom");
          bar.profile = "40x40-8-one-closed";
        },
        finds: says("slotless"),
      },
      {
        // A third bar at 45° in the corner: the sheet keeps 10.5 mm in each slot, less what play there is.
        title: "a triangle",
        edit: (file) => {
          file.bars.push({ id: "stay", profile: "40x40-8", from: [0, 0, 1000], to: [1000, 0, 0] });
          file.criteria = { "panel-engagement": "5 mm" };
          pane((panel) => {
            panel.edges = [{ bar: "left" }, { bar: "stay" }, { bar: "bottom" }];
          })(file);
        },
        finds: [],
      },
      {
        title: "a triangle with little in its slots",
        edit: (file) => {
          file.bars.push({ id: "stay", profile: "40x40-8", from: [0, 0, 1000], to: [1000, 0, 0] });
          file.criteria = { "panel-engagement": "5.5 mm" };
          pane((panel) => {
            panel.edges = [{ bar: "left" }, { bar: "stay" }, { bar: "bottom" }];
          })(file);
        },
        finds: [{ at: "pane", key: "leaves", measured: TRIANGLE / 1000, within: 1e-6 }],
      },
      {
        title: "three bars, and open above",
        edit: pane((panel) => {
          panel.edges = [{ bar: "left" }, { bar: "bottom" }, { bar: "right" }, "free"];
        }),
        finds: [],
      },
    ]);
    expect(wrong).toEqual([]);
  });
});
