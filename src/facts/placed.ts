import type { OrientedBox } from "../geometry/box.ts";
import type { Prism } from "../geometry/prism.ts";
import type { Segment } from "../geometry/segment.ts";
import type { Vec3 } from "../geometry/vector.ts";
import type { ConnectorChoice, Lock, NutKind } from "../model/frame.ts";
import type { EndName, Ref } from "../model/ref.ts";
import type { Bore, Connector, FaceName, Nut, Screw } from "../model/stock/stock.ts";
import type { Landing } from "./landing.ts";

/** A screw where it comes to lie. */
export interface PlacedScrew {
  readonly ref: Ref<"screw">;
  readonly connector: Ref<"connector">;
  /** The joint, door or panel it belongs to. */
  readonly joint: Ref;
  readonly hole: string;
  readonly screw: Screw;
  /** Middle of the bearing face under the head, m. */
  readonly seat: Vec3;
  /** From head to tip. */
  readonly axis: Vec3;
  /** Thickness between the head and the face of the bar, m. */
  readonly grip: number;
  readonly into: IntoNut | IntoBore;
  /** Where the key meets the screw, and the direction it pushes. */
  readonly drive: { readonly point: Vec3; readonly axis: Vec3 };
}

export interface IntoNut {
  readonly kind: "nut";
  readonly ref: Ref<"nut">;
  readonly landing: Landing;
  /** What of stock fits this slot and thread. */
  readonly nut: Nut | undefined;
}

export interface IntoBore {
  readonly kind: "bore";
  readonly bar: string;
  readonly end: EndName;
  readonly bore: Bore;
  /** Thread engaged as drawn, m. */
  readonly engaged: number;
}

/** How a connector holds one bar: how many screws, and whether lugs in the slot keep it from turning. */
export interface Hold {
  readonly bar: string;
  readonly screws: readonly { readonly point: Vec3; readonly axis: Vec3 }[];
  readonly lugs: boolean;
}

/** A round hole or shank through a bar, m. */
export interface Bored {
  readonly bar: string;
  readonly by: Ref;
  readonly what: string;
  readonly line: Segment;
  readonly radius: number;
}

/** What fills a stretch of a slot, m from the bar's drawn from point. */
export interface InSlot {
  readonly bar: string;
  readonly face: FaceName;
  readonly slot: number;
  readonly by: Ref;
  readonly what: string;
  readonly from: number;
  readonly to: number;
}

/** What holds screws, where it comes to lie: a connector, one screw of a tie, a hinge or latch, or a row of screws through a sheet. */
export interface ScrewedPart {
  readonly ref: Ref<"connector">;
  /** The joint, door or panel it belongs to. */
  readonly joint: Ref;
  /** Undefined for the screws of a sheet. */
  readonly part?: Connector;
  /** The torque is undefined where none is rated: under the heads of screws in sheets. */
  readonly choice?: { readonly nut: NutKind; readonly lock: Lock; readonly torque?: number };
  readonly holds: readonly Hold[];
  /** All of it that stands out of the slots, in convex pieces: legs, side walls, plates, leaves. */
  readonly pieces: readonly Prism[];
  readonly screws: readonly PlacedScrew[];
  readonly bored: readonly Bored[];
  readonly inSlots: readonly InSlot[];
  /** Where its head lies behind the lips of a slot, m. */
  readonly head?: Landing;
  /** It goes on with this sheet. */
  readonly sheet?: Ref<"panel">;
  /** The file draws neither its place nor its screw: both were taken as usual. */
  readonly usual?: boolean;
}

/** A connector where it comes to lie. */
export interface PlacedConnector extends ScrewedPart {
  readonly joint: Ref<"joint">;
  readonly part: Connector;
  readonly choice?: ConnectorChoice;
  readonly solids: readonly OrientedBox[];
  /** Of a plate: its outline where it lies on the bars, counter-clockwise about the normal off them, and the convex hull of that, m. */
  readonly outline?: { readonly normal: Vec3; readonly ring: readonly Vec3[]; readonly hull: readonly Vec3[] };
}
