import { describe, expect, it } from "vitest";
import type { Report } from "../../src/inspection/report.ts";
import { FINDINGS_SHOWN, textReporter } from "../../src/report/text/text-reporter.ts";
import { accepted, cards, loose, rejected, sagging, unread } from "./sample-report.ts";

function print(reports: readonly Report[], options = {}): string {
  const reporter = textReporter(options);
  return [
    ...reporter.begin(cards),
    ...reports.flatMap((report) => [...reporter.frame(report)]),
    ...reporter.end(),
  ].join("");
}

describe("the ticket", () => {
  it("names the frame and its verdict, then each part with its findings, numbers, reasons and cures", () => {
    expect(print([rejected])).toBe(`frames/potting-bench.frame.json · 22 bars, 34 joints, 3 load cases · REJECT

brace-1 (line 58)
  REJECT  turns freely about its own axis
        frame.loose

rail-3, between leg-1 and leg-4 (line 41)
  HOLD  sags 8.1 mm under "trays"; 4.9 mm allowed (165 %)
        bar.sags: limit of the frame's criteria, span / 300; under G + trays; joints typical, 7.2 mm
        if stiff
        cure: profile 40x80-8, tall +z; 8.1 mm becomes 1.4 mm
  CONCEDED  the far end is open: 610 mm² of sawn metal
        end.bare
        note, conceded by M. Sand until 2027-03-31: behind the wall
        mend: close it with a cap
        at rail-3/to

UNDECIDED because of frame.loose; keeps the frame from accept
  wait for it: frame.sways and frame.buckles

concession: bar.twists on rail-9 matches nothing

5 rules ran on 61 parts: 95 met, 3 not met, 1 undecided, 1 conceded (1 cause of undecided).
Closest to its limit: joint.slips on rail-1.from, 1.10 kN, 1.20 kN allowed (92 %).
Assumed: torque as rated; end-load nuts.
A screening aid, not a stamp: local codes and a licensed engineer decide.
`);
  });

  it("ends with what was looked at and the caution when all is well", () => {
    const lines = print([accepted]).trimEnd().split("\n");
    expect(lines[0]).toBe("frames/a-shelf.frame.json · 22 bars, 34 joints, 3 load cases · ACCEPT");
    expect(lines.slice(-3)).toEqual([
      "1 rule ran on 61 parts: 34 met, 0 not met, 0 undecided, 0 conceded.",
      "Closest to its limit: joint.slips on rail-1.from, 1.10 kN, 1.20 kN allowed (92 %).",
      "A screening aid, not a stamp: local codes and a licensed engineer decide.",
    ]);
  });

  it("says where and why a file cannot be read", () => {
    const text = print([unread]);
    expect(text).toContain("frames/torn.frame.json:3:14, at /bars/0/from/0\n");
    expect(text).toContain('  found "20 mn"; expected a length, such as 20 or "20 mm"\n  mend: write "20 mm"\n');
    expect(text).toContain("No rule ran: the file was not read.");
  });

  it("adds up several frames in a last line", () => {
    expect(print([accepted, rejected, unread])).toMatch(/\n3 frames: 1 unread, 1 reject, 1 accept · 3 findings\n$/);
  });

  it("says that a rule failed and that the result is incomplete", () => {
    const failures = [{ rule: "acme:gap", message: "it threw an exception" }];
    const text = print([{ ...rejected, complete: false, failures }]);
    expect(text).toContain("· REJECT, INCOMPLETE\n");
    const failed = { ...rejected, complete: false, failures };
    expect(print([accepted, failed])).toMatch(/\n2 frames: 1 reject, 1 accept, 1 of them incomplete · 3 findings\n$/);
    expect(text).toContain("FAILED rule acme:gap: it threw an exception\n");
  });

  it("prints findings of a part that read the same once, with what they are about", () => {
    const ids = ["rail-1.from/1/a1", "rail-1.from/2/a1"];
    const findings = ids.map((id) => ({ ...loose, at: { kind: "screw" as const, id }, where: "joint rail-1.from" }));
    expect(print([{ ...rejected, findings }])).toContain(`joint rail-1.from (line 58)
  REJECT  turns freely about its own axis
        frame.loose
        2 times: rail-1.from/1/a1 and rail-1.from/2/a1

`);
  });

  it("stays within 100 columns when words allow it, and within fewer when told", () => {
    const long = { ...sagging, advice: "take a stiffer profile, or ".repeat(20), where: "a long name ".repeat(20) };
    for (const width of [100, 60]) {
      const widths = print([{ ...rejected, findings: [long] }], { width })
        .split("\n")
        .map((line) => line.length);
      expect(Math.max(...widths)).toBeLessThanOrEqual(width);
    }
  });

  it("adds colour without changing a word", () => {
    const coloured = print([rejected, unread], { coloured: true });
    expect(coloured).toContain("\u001b[");
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the colours that are taken off
    expect(coloured.replace(/\u001b\[\d+m/g, "")).toBe(print([rejected, unread]));
  });

  it("shows every control, bidi and zero-width character of hostile names as an escape", () => {
    const hostile = "\u001b[2J\r\n\u0085\u007f\u202e\u2066\u200b\ufeff\u2028rail";
    const report: Report = {
      ...rejected,
      file: hostile,
      findings: [{ ...sagging, where: hostile, text: hostile, advice: hostile, rule: hostile }],
      problems: [
        {
          code: "x",
          weight: "warning",
          place: { ...sagging.place, file: hostile, pointer: hostile },
          found: hostile,
          expected: hostile,
        },
      ],
      failures: [{ message: hostile }],
      assumed: [hostile],
      concessionRemarks: [hostile],
    };
    const text = print([report]);
    expect(text.replaceAll("\n", "")).not.toMatch(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/u);
    expect(text).toContain("\\u001b[2J\\u000d\\u000a\\u0085\\u007f\\u202e\\u2066\\u200b\\ufeff\\u2028rail");
  });

  it("prints at most ten thousand findings of a frame and says how many are left", () => {
    const findings = Array.from({ length: FINDINGS_SHOWN + 5 }, (_, i) => ({ ...sagging, where: `rail-${i}` }));
    const text = print([{ ...rejected, findings }]);
    expect(text).toContain("5 more findings not shown here");
    expect(text).toContain(`rail-${FINDINGS_SHOWN - 1} (line 41)`);
    expect(text).not.toContain(`rail-${FINDINGS_SHOWN} (line 41)`);
  });
});
