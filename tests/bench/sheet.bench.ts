/**
 * Size of sheets and how soon they can be used: `npx tsx tests/bench/sheet.bench.ts`. Each is opened from the disk in a browser that
 * draws in software: ms from the start of the navigation until the frame is drawn and until it has turned to a key, the least and the
 * middle of some openings, and how many times a second it is drawn while it turns. `-- <bars>` adds shelving of so many bars.
 */
import { mkdtempSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import { KINDS } from "../../src/cli/start/kinds.ts";
import { frameText } from "../../src/cli/start/layout.ts";
import { wishOf } from "../../src/cli/start/order.ts";
import { browserPath, startBrowser, without } from "../browser/browser.ts";
import { textOf } from "../demo/inspect-demo.ts";
import { sheetOfText } from "../report/sheet-of-text.ts";
import { baysFor, shelving } from "./shelving.ts";

const OPENINGS = 5;
const TURNING = 3000; // ms
const ASKED_EVERY = 100; // ms

/** Run in the page before anything else: notes when the frame is first drawn, and then turns it by a key. */
const WATCH = `new MutationObserver((_, watch) => {
  const canvas = document.querySelector("canvas");
  if (!canvas?.dataset.turn) return;
  if (window.drawn === undefined) {
    window.drawn = performance.now();
    window.first = canvas.dataset.turn;
    canvas.dispatchEvent(new KeyboardEvent("keydown", { key: "ArrowLeft", bubbles: true }));
  } else if (canvas.dataset.turn !== window.first) {
    window.turned = performance.now();
    watch.disconnect();
  }
}).observe(document, { subtree: true, childList: true, attributes: true, attributeFilter: ["data-turn"] });`;
const TURNED = "window.turned === undefined ? undefined : [window.drawn, window.turned]";
/** Pictures a second while a key is held. */
const HELD = `new Promise((done) => {
  const canvas = document.querySelector("canvas");
  let [pictures, last] = [0, canvas.dataset.turn];
  const start = performance.now();
  const step = () => {
    if (canvas.dataset.turn !== last) pictures++;
    last = canvas.dataset.turn;
    canvas.dispatchEvent(new KeyboardEvent("keydown", { key: "ArrowLeft", bubbles: true }));
    const spent = performance.now() - start;
    if (spent < ${TURNING}) requestAnimationFrame(step);
    else done((1000 * pictures) / spent);
  };
  step();
})`;

async function opened(browser: Browser, url: string): Promise<readonly [drawn: number, turned: number, rate: number]> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, reducedMotion: "reduce" });
  const page = await context.newPage();
  await page.addInitScript(WATCH);
  await page.goto(url, { waitUntil: "commit" });
  // Asked from outside: the page's own policy lets in no code that comes as text.
  let seen: readonly [number, number] | undefined;
  while (seen === undefined) {
    await new Promise((done) => setTimeout(done, ASKED_EVERY));
    seen = await page.evaluate<readonly [number, number] | undefined>(TURNED);
  }
  const [drawn, turned] = seen;
  const rate = await page.evaluate<number>(HELD);
  await context.close();
  return [drawn, turned, rate];
}

const sorted = (values: readonly number[]): readonly number[] => [...values].sort((a, b) => a - b);
const least = (values: readonly number[]): string => (sorted(values)[0] ?? Number.NaN).toFixed(0);
const middle = (values: readonly number[]): string => (sorted(values)[values.length >> 1] ?? Number.NaN).toFixed(0);

const { kind, usual } = KINDS.rack;
const frames: Record<string, string> = {
  "potting-bench-faulty": textOf("potting-bench-faulty"),
  "tray-rack-faulty": textOf("tray-rack-faulty"),
  "start rack": frameText("mm-N-kg", kind.draw(wishOf(kind, usual, { units: "mm-N-kg" }))),
};
const bars = Number(process.argv[2] ?? 0);
if (bars > 0) frames[`shelving of ${bars} bars`] = new TextDecoder().decode(shelving(baysFor(bars)).bytes);

if (browserPath === undefined) console.log(`no sheet was opened${without}`);
else {
  const folder = mkdtempSync(join(tmpdir(), "trysquare-bench-"));
  const browser = await startBrowser();
  const rows: object[] = [];
  try {
    for (const [name, text] of Object.entries(frames)) {
      const path = join(folder, "sheet.html");
      const before = process.cpuUsage();
      writeFileSync(path, sheetOfText(text));
      const { user, system } = process.cpuUsage(before);
      const runs: (readonly number[])[] = [];
      for (let i = 0; i < OPENINGS; i++) runs.push(await opened(browser, pathToFileURL(path).href));
      const [drawn, turned, rates] = [0, 1, 2].map((i) => runs.map((run) => run[i] ?? Number.NaN));
      rows.push({
        sheet: name,
        MB: (statSync(path).size / 1e6).toFixed(2),
        "made in, CPU s": ((user + system) / 1e6).toFixed(1),
        "drawn, ms": least(drawn ?? []),
        "turned, ms": `${least(turned ?? [])} (${middle(turned ?? [])})`,
        "pictures a s": sorted(rates ?? [])[OPENINGS - 1]?.toFixed(0),
      });
    }
  } finally {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  }
  console.table(rows);
}
