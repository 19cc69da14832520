import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { ModelData } from "../../src/drawing/model3d/model-data.ts";
import { unreadReport } from "../../src/host/unread-report.ts";
import type { Report } from "../../src/inspection/report.ts";
import { sheetDocument } from "../../src/report/sheet/sheet-document.ts";
import type { SheetInput } from "../../src/report/sheet/sheet-input.ts";
import { textOf } from "../demo/inspect-demo.ts";
import { tee } from "../rules/base-frames.ts";
import { sheetInput } from "./sheet-of-text.ts";

const sheetOf = (input: SheetInput): string => [...sheetDocument(input)].join("");
const faulty = sheetInput(textOf("potting-bench-faulty"));
const page = sheetOf(faulty);
const textIn = (markup: string): string => markup.replace(/<[^>]*>/g, "");

describe("the inspection sheet", () => {
  it("holds every finding once, with its sentence, under the number of its part", () => {
    const articles = [...page.matchAll(/<article class="finding[^>]*data-at="([^"]*)" data-rule="([^"]*)"/g)];
    expect(articles.map(([, at, rule]) => `${rule} ${at}`)).toEqual(
      faulty.report.findings.map(({ rule, at }) => `${rule} ${at.kind} ${at.id}`),
    );
    for (const { text } of faulty.report.findings)
      expect(textIn(page)).toContain(text.replaceAll('"', "&quot;").replaceAll("'", "&#39;"));
    const parts = new Set(faulty.report.findings.map(({ where }) => where));
    expect([...page.matchAll(/<section class="part /g)]).toHaveLength(parts.size);
  });

  it("puts a balloon for every part that has a place on each of the six views", () => {
    const views = [...page.matchAll(/<figure class="view" data-view[\s\S]*?<\/figure>/g)].map(([figure]) => figure);
    expect(views).toHaveLength(6);
    const parts = [...page.matchAll(/<section class="part [^>]*id="p(\d+)"/g)].map(([, n]) => n);
    for (const view of views) {
      const balloons = [...view.matchAll(/font-weight="bold"[^>]*>(\d+)<\/text>/g)].map(([, n]) => n);
      expect([...balloons].sort()).toEqual([...parts].sort());
    }
  });

  it("fills each bar by the greatest share of a limit it uses, in heavier lines where that is half of a limit or more", () => {
    const figure = /<figure class="view" data-shares>[\s\S]*?<\/figure>/.exec(page)?.[0] ?? "";
    const greatest = new Map<string, number>();
    for (const { at, utilisation } of faulty.report.margins ?? [])
      if (at.kind === "bar") greatest.set(at.id, Math.max(utilisation, greatest.get(at.id) ?? 0));
    const half = [...greatest].filter(([, share]) => share >= 0.5).map(([bar]) => bar);
    const bars = [...figure.matchAll(/<g data-part="bar ([^"]*)"[\s\S]*?<\/g>/g)];
    expect(bars).toHaveLength(22);
    // 0.9 is the usual width of a line of the drawings.
    const heavier = bars.filter(([drawn]) => Number(/stroke-width="([\d.]+)"/.exec(drawn)?.[1]) > 0.9);
    expect(half.length).toBeGreaterThan(0);
    expect(heavier.map(([, bar]) => bar).sort()).toEqual(half.sort());
    for (const words of ["under 25 %", "25 to 50 %", "50 to 80 %", "80 to 100 %", "beyond the limit", "not measured"])
      expect(textIn(page)).toContain(words);
  });

  it("names the file's revision by its SHA-256 (FIPS 180-4), the house and the version", () => {
    const hash = createHash("sha256").update(textOf("potting-bench-faulty")).digest("hex");
    expect(page).toContain(hash);
    // On the foot of each printed page, to tell loose pages of one revision from those of another.
    expect(page).toContain(`file SHA-256 ${hash.slice(0, 16)}…`);
    expect(page).toContain("trysquare 1.2.3");
    expect(sheetOf({ ...faulty, house: "shed.house.json" })).toContain("shed.house.json");
  });

  it("lists every rule that ran with its outcome, and every bar with its shares", () => {
    for (const { rule } of faulty.report.tallies) expect(page).toContain(`<code>${rule}</code>`);
    const rows = /id="bars"[\s\S]*?<tbody>([\s\S]*?)<\/tbody>/.exec(page)?.[1] ?? "";
    expect([...rows.matchAll(/<th scope="row">/g)]).toHaveLength(22);
    expect(rows).toMatch(/class="num">\d+ %</);
  });

  it("shows what a cure would come to, before and after", () => {
    const [finding] = faulty.report.findings.filter(({ measure }) => measure !== undefined);
    if (!finding) throw new Error("no measured finding");
    const cures = [{ words: "a stiffer bar", edits: [], after: "1.4 mm" }];
    const findings = faulty.report.findings.map((one) => (one === finding ? { ...one, cures } : one));
    const text = sheetOf({ ...faulty, report: { ...faulty.report, findings } });
    expect(text).toContain(`${finding.measure?.shown.measured} → <b>1.4 mm</b>`);
  });

  it("draws a cure before and after from one place, with what changes brought out, and nothing where that does not show", () => {
    const one = faulty.report.findings.find(({ rule }) => rule === "end.bare");
    if (!one) throw new Error("no open end");
    const rail = (JSON.parse(textOf("potting-bench-faulty")) as { bars: { id: string }[] }).bars.findIndex(
      ({ id }) => id === "shelf-1",
    );
    const pairs = (edits: readonly { pointer: string; to: unknown }[]): readonly string[] => {
      const cures = [{ words: "a change", edits }];
      const findings = faulty.report.findings.map((finding) => (finding === one ? { ...finding, cures } : finding));
      const text = sheetOf({ ...faulty, report: { ...faulty.report, findings } });
      const [pair = ""] = /<div class="pair">[\s\S]*?<\/div>/.exec(text) ?? [];
      return [...pair.matchAll(/<figure>[\s\S]*?<\/figure>/g)].map(([figure]) => figure);
    };
    const [before = "", after = "", ...more] = pairs([{ pointer: `/bars/${rail}/profile`, to: "40x40-8-heavy" }]);
    expect(more).toEqual([]);
    for (const [figure, word] of [
      [before, "before"],
      [after, "after"],
    ] as const) {
      expect(figure).toContain(`<title>${one.at.id}: a change, ${word}</title>`);
      expect(figure).toContain('data-part="bar shelf-1"');
    }
    expect(pairs([{ pointer: "/title", to: "Another title" }])).toEqual([]);
    // An edit that finds no place, and one that makes no frame, are no pictures and no fault of the sheet.
    expect(pairs([{ pointer: "/nowhere/0", to: 1 }])).toEqual([]);
    expect(pairs([{ pointer: "/bars", to: 1 }])).toEqual([]);
  });

  it("draws the best tool on a screw that none reaches, with the length free in front of it", () => {
    const fault = readFileSync("docs/rules/screw.no-room.fault.frame.json", "utf8");
    const text = sheetOf(sheetInput(fault));
    const article = text.slice(text.indexOf('data-rule="screw.no-room"'));
    expect(article.slice(0, article.indexOf("</article>"))).toMatch(
      /<figure class="check tool"><svg [\s\S]*does not go in: 32 mm free before under, 38 mm needed/,
    );
  });

  it("draws the tool that a finding names, with the room its hand has between two walls", () => {
    // Worked in tests/rules/screw.no-room.test.ts: walls 65 mm off the screw leave the fingers 2·(65 - 46.5)/sin 60° = 42.7 mm.
    const long = (id: string, y: number, z: number) => ({ id, profile: "40x40-8", from: [0, y, z], to: [600, y, z] });
    const text = sheetOf(
      sheetInput(
        JSON.stringify({
          ...tee(),
          bars: [...tee().bars, long("lid", 98, 500), long("wall-1", 70, 415), long("wall-2", 70, 585)],
          fastenings: [
            {
              id: "strap",
              part: "plate-I-40",
              on: "+y",
              at: [280, 20, 500],
              holds: ["rail", "lid", "wall-1", "wall-2"],
              omit: ["h1", "h2", "h4"],
            },
          ],
        }),
      ),
    );
    const article = text.slice(text.indexOf('data-rule="screw.no-room"'));
    expect(article.slice(0, article.indexOf("</article>"))).toMatch(
      /<figure class="check tool"><svg [\s\S]*strap\/1\/h3: hex-key-6 by its short arm[\s\S]*dotted: room for the hand, 42.7 mm across/,
    );
  });

  it("draws a loose frame and a buckled one as they move, for findings about the frame as a whole", () => {
    for (const [rule, words] of [
      ["frame.loose", "How it moves: back and 7 more turn about x at leg-1.foot and leg-2.foot"],
      ["frame.buckles", "How it buckles under"],
      ["frame.sways", "How it sways under"],
    ]) {
      const text = sheetOf(sheetInput(readFileSync(`docs/rules/${rule}.fault.frame.json`, "utf8")));
      const article = text.slice(text.indexOf(`data-rule="${rule}"`));
      const own = article.slice(0, article.indexOf("</article>"));
      expect(own).toContain(`<figcaption>${words}`);
      expect(own).toMatch(/<path data-band="leg-1"/);
    }
  });

  it("draws a frame that tips along the line it tips over, its centre of mass at the place that the angle tells", () => {
    const text = sheetOf(sheetInput(readFileSync("docs/rules/frame.tips.fault.frame.json", "utf8")));
    const article = text.slice(text.indexOf('data-rule="frame.tips"'));
    const own = article.slice(0, article.indexOf("</article>"));
    const [, inside, up] = own.match(/the centre of mass lies ([\d.]+) mm inside it and ([\d.]+) mm up/) ?? [];
    const angle = Number(own.match(/when tilted by ([\d.]+)°/)?.[1]);
    expect((Math.atan2(Number(inside), Number(up)) * 180) / Math.PI).toBeCloseTo(angle, 1);
    // Drawn to the same scale both ways: the dashed line from the edge to the centre rises by that ratio.
    const line = own.match(
      /<path data-band="from the line to the centre of mass"[^>]*d="M([\d.]+)[ ,]([\d.]+)[ L,]+([\d.]+)[ ,]([\d.]+)"/,
    );
    const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = (line ?? []).slice(1).map(Number);
    expect(Math.abs((x1 - x0) / (y1 - y0))).toBeCloseTo(Number(inside) / Number(up), 1);
  });

  it("draws a frame that is pushed over with the push at its height and the weight at its distance", () => {
    // Tall and slender with a low tank: it stands at 10°, and not under a push of 13 % of its weight at its top.
    const slender = readFileSync("docs/rules/frame.tips.fault.frame.json", "utf8")
      .replaceAll(", 500, ", ", 300, ")
      .replaceAll(" 700]", " 1480]")
      .replaceAll(" 620]", " 1400]")
      .replace("[500, 250, 1700]", "[500, 150, 300]");
    const text = sheetOf(sheetInput(slender));
    const article = text.slice(text.indexOf('data-rule="frame.tips"'));
    const own = article.slice(0, article.indexOf("</article>"));
    const [, inside, up] = own.match(/the weight acts ([\d.]+) mm inside it, the push ([\d.]+) mm up/) ?? [];
    const [, weight, push] = own.match(/= ([\d.]+) N × [\d.]+ mm \/ [\d.]+ mm = ([\d.]+) N/) ?? [];
    // Moments about the line: W b = F y.
    expect((Number(weight) * Number(inside)) / Number(up) / Number(push)).toBeCloseTo(1, 2);
    const size = (name: string, axis: 0 | 1): number => {
      const line = new RegExp(`data-band="${name}"[^>]*d="M([\\d. ]+)L([\\d. ]+)"`).exec(own);
      const [a, b] = [line?.[1], line?.[2]].map((point) => Number(point?.split(" ")[axis]));
      return Math.abs((a ?? 0) - (b ?? 0));
    };
    expect(size("from the line to the weight", 0) / size("height of the push", 1)).toBeCloseTo(
      Number(inside) / Number(up),
      2,
    );
  });

  it("draws the frame as it swings with what shakes it, and as it gives where only plain brackets hold it", () => {
    for (const [rule, words] of [
      ["frame.resonates", /How it swings by itself at 6\.\d+ Hz, joints typical/],
      ["frame.unbraced", /How it gives under [^<]* a push of 150 N along \+[xy], soft joints/],
    ] as const) {
      const text = sheetOf(sheetInput(readFileSync(`docs/rules/${rule}.fault.frame.json`, "utf8")));
      const article = text.slice(text.indexOf(`data-rule="${rule}"`));
      const own = article.slice(0, article.indexOf("</article>"));
      expect(own).toMatch(words);
      expect(own).toMatch(/<path data-band="leg-1"/);
    }
  });

  it("draws a part that turns about lone screws as it turns, that part alone, and has the view that turns do the same", () => {
    const article = page.slice(page.indexOf('data-rule="joint.turns"'));
    const own = article.slice(0, article.indexOf("</article>"));
    expect(own).toContain("How it turns, cross-4 at cross-4.from and cross-4.to, once friction gives way");
    expect(new Set([...own.matchAll(/data-band="([^"]*)"/g)].map(([, bar]) => bar))).toEqual(new Set(["cross-4"]));
    const { shapes, poses } = JSON.parse(/id="model">(.*?)<\/script>/.exec(page)?.[1] ?? "") as ModelData;
    const pose = poses.find(({ finding }) => own.includes(`<span class="no">${finding}</span>`));
    expect(shapes[pose?.shape ?? -1]).toMatchObject({
      kind: "turning",
      name: "cross-4 at cross-4.from and cross-4.to",
    });
  });

  it("has a picture for every finding at a part with a shape, or one of the same joint before it", () => {
    const joints = new Set<string>();
    for (const [article] of page.matchAll(/<article class="finding[\s\S]*?<\/article>/g)) {
      const joint = /data-at="(?:joint|screw|connector|nut) ([^/"]*)/.exec(article)?.[1];
      const pictured = article.includes('<figure class="check') || (joint !== undefined && joints.has(joint));
      expect(pictured, article.slice(0, 120)).toBe(true);
      if (joint !== undefined) joints.add(joint);
    }
  });

  it("tells how the heaviest loads run to the floor: each joint once, as much at the feet as is applied", () => {
    const section = page.slice(page.indexOf('id="load-path-told"'), page.indexOf('id="record"'));
    expect(textIn(section)).toMatch(/The feet bear (\S+ kN) of \1 applied/);
    expect(section).toMatch(/<th scope="row">front<\/th><td>leg-2<\/td><td class="num">\d+ N<\/td>/);
    expect(section).toMatch(/<path data-band="leg-2"/);
  });

  it("draws a panel square on with how far it reaches into its slots, and tells how it is held", () => {
    for (const rule of ["panel.misfit", "panel.uncut", "panel.flexes", "panel.rattles"]) {
      const text = sheetOf(sheetInput(readFileSync(`docs/rules/${rule}.fault.frame.json`, "utf8")));
      const article = text.slice(text.indexOf(`data-rule="${rule}"`));
      const own = article.slice(0, article.indexOf("</article>"));
      expect(own).toMatch(/<title>the panel \S+ square on<\/title>[\s\S]*data-part="panel /);
      expect(own).toMatch(/data-band=[\s\S]*of room at its largest, \S+ mm in the slot at its smallest/);
    }
  });

  it("draws doors open on the isometric and the plan, and where one strikes in the finding", () => {
    const text = sheetOf(sheetInput(readFileSync("docs/rules/door.collides.fault.frame.json", "utf8")));
    const views = [...text.matchAll(/<figure class="view" data-view="(\w+)"[\s\S]*?<\/figure>/g)];
    const open = views.filter(([figure]) => figure.includes('data-ghost="bar door-free"')).map(([, name]) => name);
    expect(open).toEqual(["isometric", "top"]);
    const article = text.slice(text.indexOf('data-rule="door.collides"'));
    expect(article.slice(0, article.indexOf("</article>"))).toMatch(
      /data-ghost="bar door-free"[\s\S]*in outline where it strikes/,
    );
  });

  it("draws an open cut end from near by with its sawn metal", () => {
    const article = page.slice(page.indexOf('data-rule="end.bare"'));
    // The section of the 40x40-8 is 663 mm², all of it open.
    expect(article.slice(0, article.indexOf("</article>"))).toMatch(
      /<title>the end tool-rail\/to from near by<\/title>[\s\S]*tool-rail\/to square on<\/title>[\s\S]*tool-rail\/to: 663 mm² open/,
    );
  });

  it("keeps conceded findings with who, until when and why", () => {
    const conceded = { reason: "measured on the floor", who: "the owner", until: "2027-06-30" };
    const findings = faulty.report.findings.map((finding) => ({ ...finding, conceded }));
    const text = sheetOf({ ...faulty, report: { ...faulty.report, findings, verdict: "accept" } });
    expect(text).toContain("conceded by the owner until 2027-06-30: measured on the floor");
    expect([...text.matchAll(/data-level="conceded"/g)]).toHaveLength(findings.length);
  });

  it("lets nothing in but its own style and script: the policy holds the hash of exactly what it contains", () => {
    const [, policy = ""] = /Content-Security-Policy" content="([^"]*)"/.exec(page) ?? [];
    const unescaped = policy.replaceAll("&#39;", "'");
    expect(unescaped).toContain("default-src 'none'");
    expect(unescaped).toContain("base-uri 'none'; form-action 'none'");
    expect(unescaped).not.toContain("unsafe");
    const hashOf = (text: string): string => `'sha256-${createHash("sha256").update(text).digest("base64")}'`;
    for (const [, style = ""] of page.matchAll(/<style>([\s\S]*?)<\/style>/g))
      expect(unescaped).toContain(hashOf(style));
    for (const [, script = ""] of page.matchAll(/<script>([\s\S]*?)<\/script>/g))
      expect(unescaped).toContain(hashOf(script));
    const markup = page.replace(/<(style|script)[^>]*>[\s\S]*?<\/\1>/g, "");
    expect(markup).not.toMatch(/\son\w+=|\sstyle=|\shref=|\ssrc=|javascript:|url\(/i);
    expect(page.replaceAll("http://www.w3.org/2000/svg", "")).not.toMatch(/https?:/);
  });

  it("shows hostile names as text", () => {
    const hostile = `</script><img src=x onerror=alert(1)>"'&\u202e`;
    const text = textOf("first-bench").replace(/"title": "[^"]*"/, () => `"title": ${JSON.stringify(hostile)}`);
    const sheet = sheetOf(sheetInput(text));
    expect(sheet).not.toContain("<img");
    expect(sheet).not.toContain("\u202e");
    expect(sheet).toContain("&lt;/script&gt;&lt;img src=x onerror=alert(1)&gt;&quot;&#39;&amp;\\u202e");
  });

  it("is written for a file that cannot be read too, and says what is wrong with it", () => {
    const sheet = sheetOf(sheetInput('{"format": 1, "bars": 3}'));
    expect(sheet).toContain("UNREAD");
    expect(textIn(sheet)).toMatch(/error, bench\.frame\.json line 1: found/);
    expect(sheet).not.toContain("<svg");
    const report: Report = unreadReport("gone.frame.json", []);
    expect(sheetOf({ report, cards: [], bytes: new Uint8Array(), version: "1.2.3" })).toContain("gone.frame.json");
  });

  it("is the same, byte for byte, for the same input", () => {
    expect(sheetOf(sheetInput(textOf("potting-bench-faulty")))).toBe(page);
  });

  it("has no two elements of one id, and closes what it opens", () => {
    const ids = [...page.matchAll(/\sid="([^"]*)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    const open: string[] = [];
    for (const [, close, tag = "", attributes = ""] of page
      .replace(/<(style|script)[^>]*>[\s\S]*?<\/\1>/g, "")
      .matchAll(/<(\/?)([a-z][a-z0-9]*)([^>]*)>/gi)) {
      if (close) expect(open.pop()).toBe(tag);
      else if (!attributes.endsWith("/") && tag !== "meta") open.push(tag);
    }
    expect(open).toEqual([]);
  });
});
