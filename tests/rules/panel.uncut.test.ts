import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/panel.uncut.ts";
import { pane, paneled } from "./panel-frames.ts";

/**
 * The top bar is fastened by end fasteners; the panel runs in its underside. It ends at the posts' faces, 20 mm off their centrelines. An
 * end-fastener-8 fills 26 mm of its slot; its screw lies 8 mm under its face and takes a nut 20 mm long in the post's slot.
 */
function fastened(on: "above" | "below", notches?: [number, number]): (file: FrameFile) => void {
  return (file) => {
    file.kits = { ends: [{ connector: "end-fastener-8", on }] };
    file.joints = [{ bars: ["top"], by: "ends" }];
    if (notches)
      pane((panel) => {
        panel.notches = notches;
      })(file);
  };
}

/** From the corner of a sheet on both floors, 10.5 mm behind the faces: along the bar to the end of the fastener; down to the nut's end. */
const ALONG = 10.5 + 26;
/** The face of the top bar is at z = 980, its middle at 1000; the nut reaches 10 mm below the screw. */
const DOWN = 980 + 10.5 - (1000 - (20 - 8) - 10);

function bracketed(notches?: [number, number]): (file: FrameFile) => void {
  return (file) => {
    fastened("below", notches)(file);
    file.kits = { ends: [{ connector: "inside-bracket-40", on: "below" }] };
  };
}

const corner = (mm: number) => [{ at: "pane", key: "corner", measured: mm / 1000 }];

/** Four posts, rails between their faces at one height, and a shelf in the slots of the rails. */
const shelved =
  (notches?: [number, number]) =>
  (file: FrameFile): void => {
    const corners = [
      [0, 0],
      [800, 0],
      [800, 600],
      [0, 600],
    ] as const;
    const at = (i: number): [number, number] => [...(corners[i % 4] ?? [0, 0])];
    Object.assign(file, {
      kits: { ends: [{ connector: "end-fastener-8", on: "-z" }] },
      bars: [0, 1, 2, 3].flatMap((i) => [
        { id: `post-${i}`, profile: "40x40-8", from: [...at(i), 0], to: [...at(i), 800] },
        { id: `rail-${i}`, profile: "40x40-8", from: [...at(i), 400], to: [...at(i + 1), 400] },
      ]),
      joints: [{ bars: [0, 1, 2, 3].map((i) => `rail-${i}`), by: "ends" }],
      panels: [
        {
          id: "pane",
          sheet: "polycarbonate-5",
          held: "in-slot",
          edges: [0, 1, 2, 3].map((i) => ({ bar: `rail-${i}` })),
          ...(notches ? { notches } : {}),
        },
      ],
    } as unknown as Partial<FrameFile>);
  };

/** A sheet on two rails 400 mm apart with a cross bar between them, fastened at both ends by brackets below and beside. */
const onRails =
  (edit: (file: FrameFile) => void = () => {}) =>
  (file: FrameFile): void => {
    Object.assign(file, {
      kits: {
        ends: [
          { connector: "inside-bracket-40", on: "below" },
          { connector: "inside-bracket-40", on: "+x" },
        ],
      },
      bars: [
        { id: "rail-1", profile: "40x40-8", from: [0, 0, 500], to: [1000, 0, 500] },
        { id: "rail-2", profile: "40x40-8", from: [0, 400, 500], to: [1000, 400, 500] },
        { id: "cross", profile: "40x40-8", from: [300, 0, 500], to: [300, 400, 500] },
      ],
      joints: [{ bars: ["cross"], by: "ends" }],
      panels: [{ id: "pane", sheet: "plywood-18", held: "laid", bars: ["rail-1", "rail-2"] }],
    } satisfies Partial<FrameFile>);
    edit(file);
  };
/** A plate 5 mm thick over or under a rail. */
const plateOn =
  (on: "+z" | "-z", x: number) =>
  (file: FrameFile): void => {
    file.fastenings = [{ id: "lug", part: "plate-I-40", on, at: [x, 0, 500], holds: ["rail-1"] }];
  };
const screwedOn = (on: "+z" | "-z") =>
  onRails(pane((panel) => Object.assign(panel, { held: "on-face", on, screws: { pitch: 250 } })));
const lies = [{ at: "pane", key: "lies" }];

it("finds fittings in the corners and edges of panels", () => {
  const wrong = proveRule(rule, paneled(), [
    { title: "end fasteners where no panel runs", edit: fastened("above"), finds: [] },
    // How far it would have to be cut: the nut, which is the deeper in, lies behind 4 mm of lip.
    { title: "end fasteners in the panel's slot", edit: fastened("below"), finds: corner(-10.5) },
    { title: "notches that clear them", edit: fastened("below", [38, 14]), finds: [] },
    { title: "notches just long enough", edit: fastened("below", [ALONG + 0.5, 14]), finds: [] },
    { title: "notches too short", edit: fastened("below", [30, 15]), finds: corner(30 - ALONG) },
    { title: "notches too low for the nut", edit: fastened("below", [40, 12]), finds: corner(12 - DOWN) },
    {
      title: "more room asked for",
      edit: (file) => {
        fastened("below", [38, 14])(file);
        file.criteria = { "notch-room": "2 mm" };
      },
      finds: corner(Math.min(38 - ALONG, 14 - DOWN)),
    },
    // Legs 40 mm long lie on both faces.
    { title: "brackets in the corners", edit: bracketed([50, 50]), finds: corner(50 - (10.5 + 40)) },
    { title: "brackets cleared", edit: bracketed([52, 52]), finds: [] },
    {
      title: "a bar across the middle",
      edit: (file) => {
        file.bars.push({ id: "middle", profile: "40x40-8", from: [500, 0, 0], to: [500, 0, 1000] });
      },
      finds: [{ at: "pane", key: "crossed" }],
    },
    {
      title: "a bar behind the panel",
      edit: (file) => {
        file.bars.push({ id: "middle", profile: "40x40-8", from: [500, 30, 0], to: [500, 30, 1000] });
      },
      finds: [],
    },
    {
      title: "a plate under the middle of the top bar",
      edit: (file) => {
        file.fastenings = [{ id: "lug", part: "plate-I-40", on: "-z", at: [500, 0, 980], holds: ["top"] }];
      },
      finds: [{ at: "pane", key: "edge" }],
    },
    // Nothing of the posts is left out of the sheet: it goes 12.5 mm into the slots of both rails beside each.
    { title: "a shelf between four posts", edit: shelved(), finds: corner(-12.5) },
    { title: "a shelf notched round them", edit: shelved([14, 14]), finds: [] },
    { title: "a shelf notched too little", edit: shelved([12, 14]), finds: corner(-0.5) },
    // What stays below the plane of a sheet is in nobody's way.
    { title: "laid over brackets below and beside", edit: onRails(), finds: [] },
    { title: "laid, a plate under the rail", edit: onRails(plateOn("-z", 500)), finds: [] },
    { title: "laid on a plate", edit: onRails(plateOn("+z", 500)), finds: lies },
    {
      title: "laid up to a plate",
      edit: onRails((file) => {
        plateOn("+z", 900)(file);
        for (const panel of file.panels ?? []) panel.overhang = [0, -300, 0, 0];
      }),
      finds: [],
    },
    { title: "screwed on: its own screws go through it", edit: screwedOn("+z"), finds: [] },
    { title: "screwed on from below, where brackets stand", edit: screwedOn("-z"), finds: lies },
  ]);
  expect(wrong).toEqual([]);
});
