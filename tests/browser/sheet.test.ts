import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { KINDS } from "../../src/cli/start/kinds.ts";
import { frameText } from "../../src/cli/start/layout.ts";
import { wishOf } from "../../src/cli/start/order.ts";
import { textOf } from "../demo/inspect-demo.ts";
import { sheetOfText } from "../report/sheet-of-text.ts";
import { browserPath, startBrowser, without } from "./browser.ts";

const SLOW = 240_000;
const { kind, usual } = KINDS.rack;
/** The rack that start draws where no size is given. */
const RACK = frameText("mm-N-kg", kind.draw(wishOf(kind, usual, { units: "mm-N-kg" })));
const require = createRequire(import.meta.url);
const axeSource = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");
const { PNG } = require("pngjs") as {
  readonly PNG: {
    readonly sync: { read(png: Buffer): { readonly width: number; readonly height: number; readonly data: Buffer } };
  };
};
/** Run in the page, as text: what the picture was last turned to, once it is drawn. */
const TURN = `new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done(document.querySelector("canvas")?.dataset.turn ?? ""))))`;
const FOCUSED = `document.activeElement?.classList.contains("pick") ? document.activeElement.closest("article")?.id ?? "" : ""`;
const VIOLATIONS = `axe.run().then(({ violations }) => violations.map(({ id, nodes }) => id + ": " + nodes[0]?.html))`;
const OVERFLOW = "document.documentElement.scrollWidth - document.documentElement.clientWidth";

interface Opened {
  readonly page: Page;
  /** Whatever the page complained of, and whatever it asked for besides itself. */
  readonly complaints: string[];
  readonly requests: string[];
}

describe.skipIf(browserPath === undefined)(`a sheet in a browser${without}`, () => {
  let folder = "";
  let browser: Browser;
  let address = "";
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), "trysquare-sheet-"));
    address = write("faulty.html", sheetOfText(textOf("potting-bench-faulty")));
    browser = await startBrowser();
  }, SLOW);
  afterAll(async () => {
    await browser?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  function write(name: string, text: string): string {
    const path = join(folder, name);
    writeFileSync(path, text);
    return pathToFileURL(path).href;
  }

  async function open(url: string, options: BrowserContextOptions = {}, by = browser): Promise<Opened> {
    const context = await by.newContext({
      viewport: { width: 1280, height: 800 },
      deviceScaleFactor: 0.5,
      reducedMotion: "reduce",
      ...options,
    });
    context.setDefaultTimeout(SLOW / 2);
    const page = await context.newPage();
    const complaints: string[] = [];
    const requests: string[] = [];
    page.on("console", (message) => {
      // The software renderer tells of its own slowness; that is not the page's doing.
      if (!/GPU stall|GL Driver Message/.test(message.text())) complaints.push(message.text());
    });
    page.on("pageerror", (error) => complaints.push(error.message));
    page.on("dialog", (dialog) => {
      complaints.push(`dialog: ${dialog.message()}`);
      void dialog.dismiss();
    });
    page.on("request", (request) => requests.push(request.url()));
    await page.goto(url);
    return { page, complaints, requests };
  }

  const turnOf = (page: Page): Promise<string> => page.evaluate<string>(TURN);

  it(
    "opens from the disk without a complaint and asks for nothing but itself",
    async () => {
      const { page, complaints, requests } = await open(address);
      await page.waitForSelector("body.turning");
      expect(complaints).toEqual([]);
      expect(requests).toEqual([address]);
      // What there is to lay out before the first touch.
      expect(await page.evaluate<number>(`document.querySelectorAll("*").length`)).toBeLessThan(7000);
      await page.context().close();
    },
    SLOW,
  );

  it(
    "is no larger than 0.8 MB for a bench, and 1.5 MB for racks of 58 bars and 98 joints, and of 56 bars and 102",
    () => {
      expect(readFileSync(join(folder, "faulty.html")).length).toBeLessThan(0.8e6);
      expect(Buffer.byteLength(sheetOfText(textOf("tray-rack-faulty")))).toBeLessThan(1.5e6);
      expect(Buffer.byteLength(sheetOfText(RACK))).toBeLessThan(1.5e6);
    },
    SLOW,
  );

  it(
    "draws the frame: ink and grey on a good part of the picture",
    async () => {
      const { page } = await open(address);
      await page.waitForSelector("body.turning canvas");
      await turnOf(page);
      const { width, height, data } = PNG.sync.read(await page.locator(".stage canvas").screenshot());
      let inked = 0;
      for (let i = 0; i < data.length; i += 4) if ((data[i] ?? 255) < 245) inked++;
      expect(inked / (width * height)).toBeGreaterThan(0.03);
      await page.context().close();
    },
    SLOW,
  );

  it(
    "turns by mouse, by keys and by touch",
    async () => {
      const { page } = await open(address, { hasTouch: true });
      const canvas = page.locator(".stage canvas");
      await canvas.scrollIntoViewIfNeeded();
      const box = await canvas.boundingBox();
      if (!box) throw new Error("no canvas");
      const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
      const start = await turnOf(page);
      await page.mouse.move(x, y);
      await page.mouse.down();
      await page.mouse.move(x + 90, y + 30, { steps: 3 });
      await page.mouse.up();
      const dragged = await turnOf(page);
      expect(dragged).not.toBe(start);
      await canvas.focus();
      await page.keyboard.press("ArrowLeft");
      expect(await turnOf(page)).not.toBe(dragged);
      await page.keyboard.press("f");
      expect(await turnOf(page)).toBe("0.000 0.000");
      await page.keyboard.press("i");
      // Isometric: an eighth of a turn, lifted by asin(1/√3).
      expect(await turnOf(page)).toBe("0.785 0.615");
      const session = await page.context().newCDPSession(page);
      const touch = (type: "touchStart" | "touchMove" | "touchEnd", px: number): Promise<unknown> =>
        session.send("Input.dispatchTouchEvent", { type, touchPoints: type === "touchEnd" ? [] : [{ x: px, y }] });
      await touch("touchStart", x);
      await touch("touchMove", x + 40);
      await touch("touchMove", x + 80);
      await touch("touchEnd", x + 80);
      expect(await turnOf(page)).not.toBe("0.785 0.615");
      await page.context().close();
    },
    SLOW,
  );

  it(
    "brings every finding within reach of the keyboard, and turns to the one chosen",
    async () => {
      const { page } = await open(address);
      await page.waitForSelector("body.turning");
      const count = await page.locator("article.finding").count();
      const seen = new Set<string>();
      for (let presses = 0; presses < 60 && seen.size < count; presses++) {
        await page.keyboard.press("Tab");
        const id = await page.evaluate<string>(FOCUSED);
        if (id !== "") seen.add(id);
      }
      expect(seen.size).toBe(count);
      const before = await turnOf(page);
      await page.keyboard.press("Enter");
      expect(await turnOf(page)).not.toBe(before);
      expect(await page.locator(".pick[aria-pressed=true]").count()).toBe(1);
      expect(await page.locator(".pin.chosen").count()).toBe(1);
      await page.context().close();
    },
    SLOW,
  );

  it.each(["potting-bench-faulty", "mixer-guard-faulty"] as const)(
    "turns to every finding of %s, with a balloon for all but those of the whole frame",
    async (demo) => {
      const { page } = await open(write(`${demo}.html`, sheetOfText(textOf(demo))));
      await page.waitForSelector("body.turning");
      const articles = await page.locator("article.finding").all();
      expect(articles.length).toBeGreaterThan(5);
      for (const article of articles) {
        await page.locator("button[data-view=top]").click();
        const before = await turnOf(page);
        await article.locator("h4 .pick").click();
        expect(await turnOf(page)).not.toBe(before);
        const whole = (await article.getAttribute("data-at"))?.startsWith("frame ");
        expect(await page.locator(".pin.chosen:visible").count()).toBe(whole ? 0 : 1);
      }
      await page.context().close();
    },
    SLOW,
  );

  it(
    "filters by level and by group, findings and pins alike",
    async () => {
      const { page } = await open(address);
      await page.waitForSelector("body.turning");
      const visible = (): Promise<number> => page.locator("article.finding:visible").count();
      const all = await visible();
      await page.locator("#show-hold").uncheck();
      const rejects = await page.locator('article.finding[data-level="reject"]').count();
      expect(await visible()).toBe(rejects);
      expect(rejects).toBeLessThan(all);
      await page.locator("#show-hold").check();
      await page.locator("#show-group").selectOption("drawing");
      const drawing = await page.locator('article.finding[data-group="drawing"]').count();
      expect(await visible()).toBe(drawing);
      await page.locator("#show-group").selectOption("");
      // What was met is told once it is asked for, by keyboard as well, each rule with its closest margin.
      const outcomes = page.locator("article.outcome:visible");
      expect(await outcomes.count()).toBe(0);
      await page.locator("#show-met").focus();
      await page.keyboard.press("Space");
      const met = await page.locator("#checks tr[data-met]:not([data-met='0'])").count();
      expect(await outcomes.count()).toBe(met);
      await page.locator("#show-group").selectOption("bars");
      const sags = outcomes.filter({ hasText: "bar.sags" });
      expect(await sags.textContent()).toMatch(/MET .*\d+ met, closest \S+ mm; \S+ mm allowed, on .* %/);
      await sags.getByRole("button").click();
      expect(await page.locator("#scheme option:checked").textContent()).toBe("share used: bar.sags");
      await page.context().close();
    },
    SLOW,
  );

  it(
    "lets go of a finding that is filtered away, and drops its balloon from the still drawings",
    async () => {
      const { page } = await open(address);
      await page.waitForSelector("body.turning");
      const mark = page.locator(".views [data-mark]:visible");
      const before = await mark.count();
      const hold = page.locator('article.finding[data-level="hold"]').first();
      await hold.locator(".pick").click();
      expect(await page.locator(".pick[aria-pressed=true]").count()).toBe(1);
      await page.locator("#show-hold").uncheck();
      expect(await page.locator(".pick[aria-pressed=true]").count()).toBe(0);
      expect(await page.locator(".pin.chosen, article.chosen").count()).toBe(0);
      const left = await mark.count();
      expect(left).toBeGreaterThan(0);
      expect(left).toBeLessThan(before);
      await page.locator("#show-hold").check();
      expect(await mark.count()).toBe(before);
      await page.context().close();
    },
    SLOW,
  );

  it(
    "lists what was undecided and why once it is asked for, of one group or of all",
    async () => {
      const fault = readFileSync("docs/rules/frame.loose.fault.frame.json", "utf8");
      const { page, complaints } = await open(write("loose.html", sheetOfText(fault)));
      await page.waitForSelector("body.turning");
      const told = await page.locator("#open li[data-undecided]").allTextContents();
      expect(told.length).toBeGreaterThan(0);
      expect(await page.locator("label[for=show-undecided]").textContent()).toBe(` undecided (${told.length})`);
      const listed = page.locator("article.outcome.l-undecided:visible");
      expect(await listed.count()).toBe(0);
      await page.locator("#show-undecided").focus();
      await page.keyboard.press("Space");
      expect(await listed.locator("p").allTextContents()).toEqual(told);
      expect(told.join()).toMatch(/frame\.loose.* Waiting for it: .*bar\.sags/);
      await page.locator("#show-group").selectOption("bars");
      expect(await listed.count()).toBe(await page.locator('#open li[data-undecided*="bars"]').count());
      await page.locator("#show-group").selectOption("drawing");
      expect(await listed.count()).toBe(await page.locator('#open li[data-undecided*="drawing"]').count());
      expect(complaints).toEqual([]);
      await page.context().close();
    },
    SLOW,
  );

  it(
    "lists at once what was met where nothing was found, what comes nearest to its limit first",
    async () => {
      const { page } = await open(write("sound.html", sheetOfText(textOf("first-bench"))));
      await page.waitForSelector("body.turning");
      const met = await page.locator("#checks tr[data-met]:not([data-met='0'])").count();
      const shown = await page.locator("article.outcome.l-met:visible").allTextContents();
      expect(shown).toHaveLength(met);
      const shares = shown.flatMap((text) => /: (\d+) %/.exec(text)?.[1] ?? []).map(Number);
      expect(shares.length).toBeGreaterThan(10);
      expect(shares).toEqual([...shares].sort((a, b) => b - a));
      await page.context().close();
    },
    SLOW,
  );

  it(
    "swings gently as the frame buckles, and stands still for those who asked for less motion, until told to move",
    async () => {
      const bend = `document.querySelector("canvas").dataset.bend`;
      const moves = async (page: Page): Promise<boolean> => {
        const before = await page.evaluate<string>(bend);
        await page.waitForTimeout(700);
        return (await page.evaluate<string>(bend)) !== before;
      };
      const buckled = async (page: Page): Promise<void> => {
        await page.waitForSelector("body.turning");
        const value = await page.locator('#shape optgroup[label="buckles"] option').first().getAttribute("value");
        await page.locator("#shape").selectOption(value);
        await turnOf(page);
      };
      const { page } = await open(address, { reducedMotion: "no-preference" });
      await buckled(page);
      expect(await moves(page)).toBe(true);
      await page.locator("#shape-moves").uncheck();
      await turnOf(page);
      expect(await moves(page)).toBe(false);
      expect(Number(await page.evaluate<string>(bend))).toBeGreaterThan(0);
      // What bends under loads at rest does not swing.
      await page.locator("#shape").selectOption("0");
      expect(await page.locator("#shape-moves").isVisible()).toBe(false);
      await page.context().close();
      const { page: calm } = await open(address);
      await buckled(calm);
      expect(await moves(calm)).toBe(false);
      const whole = Number(await calm.evaluate<string>(bend));
      await calm.locator("#shape-size").fill("10");
      await turnOf(calm);
      expect(Number(await calm.evaluate<string>(bend)) / whole).toBeCloseTo(0.5, 2);
      await calm.locator("#shape-moves").check();
      expect(await moves(calm)).toBe(true);
      await calm.context().close();
    },
    SLOW,
  );

  it(
    "follows a set of loads to the feet, and says what a bar takes and gives",
    async () => {
      const { page, complaints } = await open(address);
      await page.waitForSelector("body.turning");
      await page.locator("#load-path").selectOption("0");
      await turnOf(page);
      expect(await page.locator(".stage .tag").allTextContents()).toEqual(
        [1, 2, 3, 4, 5, 6].map(
          (n) => expect.stringMatching(new RegExp(`^leg-${n}\\.foot \\d+ N(, \\d+(\\.\\d+)? N sideways)?$`)) as unknown,
        ),
      );
      expect(await page.locator("output[for=load-path]").textContent()).toMatch(/the feet bear (\S+ kN) of \1 applied/);
      const canvas = page.locator(".stage canvas");
      await canvas.scrollIntoViewIfNeeded();
      await page.locator("button[data-view=front]").click();
      await turnOf(page);
      const box = await canvas.boundingBox();
      if (!box) throw new Error("no canvas");
      // Up the middle of the picture from its lower edge: the middle leg is met somewhere.
      for (let y = 0.9; y > 0.4; y -= 0.05) await page.mouse.click(box.x + box.width / 2, box.y + box.height * y);
      expect(await page.locator(".readout").textContent()).toMatch(/(takes from|gives) .* N (bears|held by fasteners)/);
      await page.locator("#load-path").selectOption("-1");
      expect(await page.locator(".stage .tag").count()).toBe(0);
      expect(complaints).toEqual([]);
      await page.context().close();
    },
    SLOW,
  );

  it(
    "opens a door by a slider, and says how far and where it strikes",
    async () => {
      const fault = readFileSync("docs/rules/door.collides.fault.frame.json", "utf8");
      const { page, complaints } = await open(write("door.html", sheetOfText(fault)));
      await page.waitForSelector("body.turning");
      const picture = async (): Promise<Buffer> => {
        await turnOf(page);
        return page.locator(".stage canvas").screenshot();
      };
      const shut = await picture();
      await page.locator("#doors-open").fill("30");
      expect(await page.locator("output[for=doors-open]").textContent()).toBe(" door 95°");
      expect((await picture()).equals(shut)).toBe(false);
      await page.locator("#doors-open").fill("60");
      expect(await page.locator("output[for=doors-open]").textContent()).toBe(" door 190°, strikes at 180°");
      await page.locator("#doors-open").fill("0");
      expect((await picture()).equals(shut)).toBe(true);
      expect(complaints).toEqual([]);
      await page.context().close();
    },
    SLOW,
  );

  it(
    "shows with a finding the shape or the load path it belongs to, and afterwards what the reader had chosen",
    async () => {
      const shown = async (name: string, own: string): Promise<readonly string[]> => {
        const fault = readFileSync(`docs/rules/${name}.fault.frame.json`, "utf8");
        const { page, complaints } = await open(write(`${name}.html`, sheetOfText(fault)));
        await page.waitForSelector("body.turning");
        await page.locator("#shape").selectOption(own);
        const chosen = (): Promise<readonly string[]> =>
          Promise.all(
            ["#shape", "#load-path"].map((id) => page.locator(`${id} option:checked`).textContent()),
          ) as Promise<readonly string[]>;
        const before = await chosen();
        await page.locator(".pick").first().click();
        const during = await chosen();
        await page.locator(".pick").first().click();
        expect(await chosen()).toEqual(before);
        expect(complaints).toEqual([]);
        await page.context().close();
        return during;
      };
      // docs/rules/frame.resonates.md: shakes at 5 Hz, and swings by itself at 1.26 times that.
      expect(await shown("frame.resonates", "-1")).toEqual(["at 6.3 Hz, next to mixer", "not shown"]);
      expect(await shown("joint.hung", "0")).toEqual([
        expect.not.stringContaining("as drawn"),
        "self-weight + goods + tools",
      ]);
      expect((await shown("frame.sways", "-1"))[0]).toContain("a push of 150 N");
    },
    SLOW,
  );

  it(
    "keeps a balloon at its part when the door it is on opens",
    async () => {
      const { page } = await open(write("guard.html", sheetOfText(textOf("mixer-guard-faulty"))));
      await page.waitForSelector("body.turning");
      const places = async (): Promise<readonly [number, number]> => {
        await turnOf(page);
        const x = async (label: RegExp): Promise<number> =>
          (await page.getByRole("button", { name: label }).boundingBox())?.x ?? Number.NaN;
        return [await x(/^\d+: findings of door-free,/), await x(/^\d+: findings of joint top-left\.from,/)];
      };
      await page.locator("button[data-view=front]").click();
      const shut = await places();
      await page.locator("#doors-open").fill("60");
      const opened = await places();
      // The free post stands on the right of its hinges when shut, and before them when it is open by 110°.
      expect(shut[0] - opened[0]).toBeGreaterThan(100);
      expect(opened[1]).toBe(shut[1]);
      await page.context().close();
    },
    SLOW,
  );

  it(
    "shows the drawings instead where there is no WebGL, and says all without scripts",
    async () => {
      const plain = await startBrowser(["--disable-3d-apis"]);
      try {
        const { page, complaints } = await open(address, {}, plain);
        expect(await page.locator("canvas").count()).toBe(0);
        expect(await page.locator("figure.view[data-view=isometric] svg").isVisible()).toBe(true);
        // Filters need no drawing.
        expect(await page.locator("#filters input").count()).toBeGreaterThan(0);
        expect(complaints).toEqual([]);
      } finally {
        await plain.close();
      }
      const { page } = await open(address, { javaScriptEnabled: false });
      expect(await page.locator(".board figure.view > svg:visible").count()).toBe(7);
      expect(await page.locator("#load-path-told svg:visible").count()).toBe(2);
      expect(await page.locator("#load-path-told .bent path[data-band]").count()).toBeGreaterThan(10);
      expect(await page.locator("article.finding:visible").count()).toBeGreaterThan(5);
      await page.context().close();
    },
    SLOW,
  );

  it(
    "keeps balloons of the still drawings at a size that is read, however wide the window is",
    async () => {
      const { page } = await open(address, { javaScriptEnabled: false });
      for (const width of [390, 800, 1280]) {
        await page.setViewportSize({ width, height: 800 });
        const balloons = page.locator(".board .view [data-mark] rect");
        const heights = await Promise.all(
          (await balloons.all()).map(async (one) => (await one.boundingBox())?.height ?? 0),
        );
        // 11 units of 18 are letters: 12 px of balloon have letters of 7 px, 22 px of 13.
        expect(Math.min(...heights), `${width} px`).toBeGreaterThan(12);
        expect(Math.max(...heights), `${width} px`).toBeLessThan(22);
      }
      await page.context().close();
    },
    SLOW,
  );

  it(
    "prints to A4 and Letter as a record of a few pages, with the drawing and without the tools",
    async () => {
      const { page } = await open(address);
      await page.waitForSelector("body.turning");
      for (const format of ["A4", "Letter"] as const) {
        const pdf = (await page.pdf({ format })).toString("latin1");
        const pages = [...pdf.matchAll(/\/Type\s*\/Page\b/g)].length;
        expect(pages).toBeGreaterThanOrEqual(5);
        expect(pages).toBeLessThanOrEqual(11);
      }
      await page.emulateMedia({ media: "print" });
      expect(await page.locator("figure.view[data-view=isometric] svg").isVisible()).toBe(true);
      expect(await page.locator(".stage").isVisible()).toBe(false);
      expect(await page.locator(".sign").isVisible()).toBe(true);
      await page.context().close();
    },
    SLOW,
  );

  it.each([
    ["wide", 1280],
    ["on a phone", 390],
  ])(
    "has nothing an accessibility checker objects to, %s",
    async (_, width) => {
      const { page } = await open(address, { viewport: { width, height: 800 } });
      await page.waitForSelector("body.turning");
      await page.locator("#show-met").check();
      await page.evaluate(axeSource);
      const violations = await page.evaluate<readonly string[]>(VIOLATIONS);
      expect(violations).toEqual([]);
      const overflow = await page.evaluate<number>(OVERFLOW);
      expect(overflow).toBe(0);
      await page.context().close();
    },
    SLOW,
  );

  it(
    "holds long titles and ids of 64 characters on a phone, with the table of feet in a region of its own",
    async () => {
      const text = textOf("potting-bench-faulty").replaceAll(/"(leg|shelf)-(\d)"/g, (_, name: string, n: string) =>
        JSON.stringify(`${name}-${n}-`.padEnd(64, "x")),
      );
      const frame = JSON.parse(text) as { title: string };
      frame.title = "a_title_without_any_blank".repeat(5);
      const { page } = await open(write("long.html", sheetOfText(JSON.stringify(frame))), {
        viewport: { width: 400, height: 800 },
      });
      await page.waitForSelector("body.turning");
      expect(await page.evaluate<number>(OVERFLOW)).toBe(0);
      const wide = `[...document.querySelectorAll("h1,.loads table,.path table,.path p")].filter((one) => !one.closest(".wide") && one.getBoundingClientRect().right > 400).length`;
      expect(await page.evaluate<number>(wide)).toBe(0);
      await page.context().close();
    },
    SLOW,
  );

  it(
    "shows hostile names as text and runs none of them",
    async () => {
      const hostile = `</script><script>alert(1)</script><img src=x onerror=alert(2)>"'&\u202e`;
      // Ids hold no blank, dot, slash or sign that hides itself.
      const id = `<b>"'&amp`;
      const frame = JSON.parse(textOf("potting-bench-faulty").replaceAll(/"shelf-4"/g, () => JSON.stringify(id))) as {
        title: string;
        revision: string;
      };
      frame.title = hostile;
      frame.revision = "<img src=x onerror=alert(3)>";
      const { page, complaints, requests } = await open(write("hostile.html", sheetOfText(JSON.stringify(frame))));
      await page.waitForSelector("body.turning");
      expect(await page.locator("h1").textContent()).toBe(hostile.replace("\u202e", "\\u202e"));
      expect(await page.locator("main").textContent()).toContain(id);
      expect(await page.locator("img").count()).toBe(0);
      expect(complaints).toEqual([]);
      expect(requests).toHaveLength(1);
      await page.context().close();
    },
    SLOW,
  );
});
