import type { Panel } from "../model/frame.ts";
import { defineFact } from "./fact.ts";
import { type Growth, growthOf } from "./sheet-growth.ts";
import { type FacingSlots, largestSize, leastEngaged, roomLeft } from "./slot-fit.ts";
import { type PanelSide, type SlotEdge, type SlotPanel, slotPanels } from "./slot-panels.ts";

/** How a panel sits between two slots that face each other. */
export interface SlotFit extends FacingSlots {
  readonly edges: readonly [SlotEdge, SlotEdge];
  /** Of the panel, as drawn, m. */
  readonly size: number;
  /** Left between the floors when the panel is sawn large and has grown most, m; negative where it jams. */
  readonly room: number;
  /** Left in the one slot when it is sawn small, has shrunk most and lies at the floor of the deeper one, m. */
  readonly engaged: number;
}

/** A rectangular panel in slots: its size along both of its axes and how it fits. */
export interface PanelFit {
  readonly slotPanel: SlotPanel;
  readonly panel: Panel;
  /** As given, or as it should be sawn, m. */
  readonly size: readonly [number, number];
  /** One for each of its axes along which both sides are in slots. */
  readonly fits: readonly SlotFit[];
}

/** What a panel may be off its size as sawn, m: common practice. */
export const SAWN_WITHIN = 0.001;
/** Room left when the panel has grown most, where its size is worked out, m: common practice. */
export const SPARE = 0.0005;
/** Sizes worked out are full steps of a rule, m: 1 mm, or 1/32 in. */
const STEP = { "mm-N-kg": 0.001, "in-lbf-lb": 0.0254 / 32 } as const;

const depthOf = (edge: SlotEdge): number => edge.floor - edge.mouth;

function facing(low: PanelSide, high: PanelSide): FacingSlots {
  const [a, b] = [low.kind === "slot" ? -low.edge.mouth : low.at, high.kind === "slot" ? high.edge.mouth : high.at];
  const depth = (side: PanelSide): number => (side.kind === "slot" ? depthOf(side.edge) : 0);
  return { opening: b - a, depths: [depth(low), depth(high)] };
}

function fitOf(low: SlotEdge, high: SlotEdge, slots: FacingSlots, size: number, growth: Growth): SlotFit {
  // Lying at the deeper floor, it leaves the other slot further.
  const slot = slots.depths[0] > slots.depths[1] ? 1 : 0;
  return {
    ...slots,
    edges: [low, high],
    size,
    room: roomLeft(slots, size, SAWN_WITHIN, growth),
    engaged: leastEngaged(slots, slot, size, SAWN_WITHIN, growth),
  };
}

/** Sizes of rectangular panels in slots, with their play, their growth in heat and damp, and what keeps them in. */
export const panelFits = defineFact<readonly PanelFit[], { slotPanels: typeof slotPanels }>({
  id: "panel-fits",
  needs: { slotPanels },
  compute({ slotPanels: { all } }, frame) {
    const list: PanelFit[] = [];
    for (const slotPanel of all) {
      const { panel, rectangle, edges } = slotPanel;
      if (!rectangle) continue;
      const expansions = edges.map(({ body }) => frame.stock.materials.get(body.bar.profile.material)?.expansion ?? 0);
      const growth = growthOf(panel.sheet, expansions.reduce((a, b) => a + b, 0) / expansions.length, frame.site);
      const fits: SlotFit[] = [];
      const step = STEP[frame.units];
      const sizeAlong = (axis: 0 | 1): number => {
        const [low, high] = rectangle.sides[axis];
        const slots = facing(low, high);
        const most = largestSize(slots, SPARE, growth) - SAWN_WITHIN;
        const inSlots = low.kind === "slot" || high.kind === "slot";
        const size = panel.size?.[axis] ?? (inSlots ? Math.floor(most / step + 1e-6) * step : slots.opening);
        if (low.kind === "slot" && high.kind === "slot") fits.push(fitOf(low.edge, high.edge, slots, size, growth));
        return size;
      };
      list.push({ slotPanel, panel, size: [sizeAlong(0), sizeAlong(1)], fits });
    }
    return list;
  },
});
