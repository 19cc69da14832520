import { area } from "../geometry/polygon.ts";
import { add, along, cross, dot, scale, subtract, type Vec3 } from "../geometry/vector.ts";
import type { LoadCase, MemberLoad, NodeLoad } from "../mechanics/model.ts";
import type { Load, Mass } from "../model/frame.ts";
import { faceNormal } from "./axes.ts";
import { bodies, cutStation } from "./bodies.ts";
import { type Carrier, carriers, pressed } from "./carriers.ts";
import { chooseFace } from "./face-choice.ts";
import { defineFact } from "./fact.ts";
import { frameMiddle } from "./frame-middle.ts";
import { type PanelShare, panelShares } from "./panel-shares.ts";
import { PUSH_PATCH } from "./push-patch.ts";
import { roamingPlaces } from "./roaming-places.ts";
import { pulledOut } from "./slides.ts";
import { spreadForce } from "./spread-force.ts";
import { type Structure, structure } from "./structure.ts";
import { faceDistance } from "./tubes.ts";

/** Standard gravity, m/s² (ISO 80000-3). */
export const GRAVITY = 9.80665;

/** Loads that act together, as the solver takes them. */
export interface ActingCase {
  /** As the author named it, or "self-weight". */
  readonly name: string;
  readonly kind: "permanent" | "variable" | "accidental";
  /** Of a load that roams along a bar, where it is; what stands still in a case is one of its own. */
  readonly roams?: Roaming;
  readonly loads: LoadCase;
}

/** One place of a load that roams: of those of one load only one acts at a time, whatever the other loads do. */
export interface Roaming {
  /** Which of the roaming loads of its case: one on several bars is one on each. */
  readonly load: number;
  readonly bar: string;
  /** Where along the bar, in words: "half way along". */
  readonly words: string;
  /** m */
  readonly at: Vec3;
}

export interface Acting {
  readonly cases: readonly ActingCase[];
  /** Loads that found nothing to act on, by id. */
  readonly lost: readonly string[];
}

const DOWN: Vec3 = [0, 0, -1];
const NOTHING: Vec3 = [0, 0, 0];
/** A stretch no longer than this is a point, m. */
const POINT = 1e-6;

class Gathering {
  readonly members: MemberLoad[] = [];
  readonly nodes: NodeLoad[] = [];
  private readonly structure: Structure;
  private readonly shares: ReadonlyMap<string, PanelShare>;
  constructor(known: Structure, shares: ReadonlyMap<string, PanelShare>) {
    this.structure = known;
    this.shares = shares;
  }

  /** A force [N] on a bar at a station, off its axis by `arm` [m]. */
  point(bar: string, station: number, force: Vec3, arm: Vec3, moment?: Vec3): void {
    const place = this.structure.locate(bar, station);
    if (place)
      this.members.push({
        kind: "point",
        member: place.piece,
        along: place.along,
        force,
        arm,
        ...(moment ? { moment } : {}),
      });
  }

  /** A uniform force per length [N/m] on a stretch of a bar. */
  line(bar: string, from: number, to: number, force: Vec3, arm: Vec3): void {
    for (const index of this.structure.piecesOf(bar)) {
      const piece = this.structure.pieces[index];
      if (!piece) continue;
      const start = Math.max(from, piece.stations[0]);
      const end = Math.min(to, piece.stations[1]);
      if (end - start > 1e-9)
        this.members.push({
          kind: "line",
          member: index,
          start: start - piece.stations[0],
          end: end - piece.stations[0],
          force: [force, force],
          arm,
        });
    }
  }

  /** What a thing gives the stretches of bars on which it rests: a force [N] spread along each, and a moment [N·m]. */
  rest(points: readonly Carrier[], forces: readonly Vec3[], moments: readonly Vec3[]): void {
    for (const [i, { bar, from, to }] of points.entries()) {
      const [force, moment] = [forces[i] ?? NOTHING, moments[i] ?? NOTHING];
      const spread = to - from > POINT;
      if (spread) this.line(bar, from, to, scale(force, 1 / (to - from)), NOTHING);
      if (!spread || dot(moment, moment) > 0)
        this.point(bar, (from + to) / 2, spread ? NOTHING : force, NOTHING, moment);
    }
  }

  /** A pressure [Pa] on a panel, in a direction. */
  pressure(panel: string, pressure: number, direction: Vec3): boolean {
    const share = this.shares.get(panel);
    for (const strip of share?.strips ?? [])
      this.line(strip.bar, strip.from, strip.to, scale(direction, pressure * strip.areaPerLength), [0, 0, 0]);
    return share !== undefined && share.strips.length > 0;
  }
}

/** What forces on the carriers leave of the moment of a force, N·m: carriers in one line take it as moments, by their shares. */
function leftOver(moment: Vec3, forces: readonly Vec3[], points: readonly Carrier[]): readonly Vec3[] {
  const left = points.reduce((rest, point, i) => subtract(rest, cross(point.at, forces[i] ?? NOTHING)), moment);
  const size = points.reduce((sum, { share }) => sum + Math.abs(share), 0);
  return points.map(({ share }) => scale(left, Math.abs(share) / size));
}

/** Self-weight, equipment and declared loads on the bars that take them; pressures on panels carried to their bars. */
export const acting = defineFact<
  Acting,
  { bodies: typeof bodies; structure: typeof structure; shares: typeof panelShares; middle: typeof frameMiddle }
>({
  id: "acting",
  needs: { bodies, structure, shares: panelShares, middle: frameMiddle },
  compute({ bodies: all, structure: known, shares, middle }, frame) {
    const lost: string[] = [];
    const masses = new Map(frame.masses.map((mass) => [mass.ref.id, mass]));
    /** A force on a thing as forces on its carriers. */
    const spread = (force: Vec3, at: Vec3, points: readonly Carrier[]): readonly Vec3[] =>
      spreadForce(
        force,
        at,
        points.map((p) => p.at),
        points.map((p) => p.share),
      );
    const borne = (gathering: Gathering, points: readonly Carrier[], at: Vec3, force: Vec3): void => {
      const forces = spread(force, at, points);
      gathering.rest(points, forces, leftOver(cross(at, force), forces, points));
    };
    const heavy = (gathering: Gathering, mass: Mass, force: Vec3): void => {
      borne(gathering, carriers(mass, all, shares), mass.centre, force);
    };
    /** A force [N] on a panel: square to it on a patch in its middle, in its plane on all bars round it alike. */
    const push = (gathering: Gathering, share: PanelShare, force: Vec3): boolean => {
      const square = scale(share.normal, dot(force, share.normal));
      const points = dot(square, square) > 0 ? pressed(share, PUSH_PATCH, all) : [];
      if (points.length > 0) borne(gathering, points, share.middle, square);
      const rest = points.length > 0 ? subtract(force, square) : force;
      const size = Math.sqrt(dot(rest, rest));
      const along =
        size > 0 && gathering.pressure(share.panel.ref.id, size / Math.max(share.area, 1e-9), scale(rest, 1 / size));
      return points.length > 0 || along;
    };

    // A moment [N·m] on a thing turns it on what carries it: as couples, and as moments where the carriers are in one line.
    const turn = (gathering: Gathering, mass: Mass, moment: Vec3): void => {
      const points = carriers(mass, all, shares);
      // A pair of forces square to it, an arm apart: r × F = M with r = F × M / F².
      const [x, y, z] = moment.map(Math.abs) as [number, number, number];
      const least: Vec3 = x <= y && x <= z ? [1, 0, 0] : y <= z ? [0, 1, 0] : [0, 0, 1];
      const force = cross(moment, least);
      const square = dot(force, force);
      if (square === 0) return;
      const arm = scale(cross(force, moment), 1 / square);
      const near = spread(force, mass.centre, points);
      const far = spread(force, add(mass.centre, arm), points);
      const couple = points.map((_, i) => subtract(far[i] ?? NOTHING, near[i] ?? NOTHING));
      gathering.rest(points, couple, leftOver(moment, couple, points));
    };

    // Pulled out it turns about what carries it.
    const pull = (gathering: Gathering, mass: Mass, by: Vec3): void => {
      const points = carriers(mass, all, shares);
      const weight = scale(DOWN, mass.mass * GRAVITY);
      const shut = spread(weight, mass.centre, points);
      const out = spread(weight, add(mass.centre, by), points);
      const change = points.map((_, i) => subtract(out[i] ?? NOTHING, shut[i] ?? NOTHING));
      const left = leftOver(cross(by, weight), change, points);
      // What is bolted down is in the self-weight where it is pushed in.
      gathering.rest(points, mass.fixed ? change : out, left);
    };

    const own = new Gathering(known, shares);
    for (const body of all.values()) {
      if (!body.prism) continue;
      const material = frame.stock.materials.get(body.bar.profile.material);
      const perLength = area(body.bar.profile.region) * (material?.density ?? 2700);
      own.line(
        body.bar.ref.id,
        cutStation(body, "from"),
        cutStation(body, "to"),
        scale(DOWN, perLength * GRAVITY),
        [0, 0, 0],
      );
    }
    for (const { node, joint } of known.links.map((link) => ({
      node: known.nodeAt(link.onto, link.stations[1]),
      joint: link,
    }))) {
      const mass = joint.connectors.reduce((sum, connector) => sum + connector.part.mass, 0);
      if (mass > 0) own.nodes.push({ node, force: scale(DOWN, mass * GRAVITY) });
    }
    for (const [id, share] of shares)
      own.pressure(id, share.panel.sheet.density * share.panel.sheet.thickness * GRAVITY, DOWN);
    for (const mass of frame.masses) if (mass.fixed) heavy(own, mass, scale(DOWN, mass.mass * GRAVITY));
    const cases: ActingCase[] = [
      { name: "self-weight", kind: "permanent", loads: { members: own.members, nodes: own.nodes } },
    ];

    for (const mass of frame.masses) {
      if (mass.fixed) continue;
      const gathering = new Gathering(known, shares);
      heavy(gathering, mass, scale(DOWN, mass.mass * GRAVITY));
      cases.push({ name: mass.ref.id, kind: "variable", loads: { members: gathering.members, nodes: [] } });
    }

    for (const mass of frame.masses) {
      if (!mass.slides) continue;
      const gathering = new Gathering(known, shares);
      pull(gathering, mass, mass.slides.by);
      const loads = { members: gathering.members, nodes: [] };
      cases.push({ name: pulledOut(mass.ref.id), kind: "variable", loads });
    }

    /** Whether a load moves along the bar that it is on. */
    const roams = ({ at, amount }: Load, id: string): boolean =>
      at.kind === "worst" && (amount.kind === "force" || amount.kind === "moment") && all.get(id)?.prism !== undefined;
    const put = (gathering: Gathering, load: Load, id: string, where?: number): boolean => {
      const { amount, direction } = load;
      const mass = masses.get(id);
      if (mass) {
        if (amount.kind === "force") heavy(gathering, mass, scale(direction, amount.value));
        else if (amount.kind === "moment") turn(gathering, mass, scale(direction, amount.value));
        return amount.kind === "force" || amount.kind === "moment";
      }
      const share = shares.get(id);
      if (share) {
        if (amount.kind === "force") return push(gathering, share, scale(direction, amount.value));
        return amount.kind === "pressure" && gathering.pressure(id, amount.value, direction);
      }
      const body = all.get(id);
      if (!body?.prism) return false;
      const [low, high] = [cutStation(body, "from"), cutStation(body, "to")];
      const face = load.face && chooseFace(body, load.face, middle);
      const arm: Vec3 =
        face && "is" in face ? scale(faceNormal(body.axes, face.is), faceDistance(body, face.is)) : [0, 0, 0];
      if (amount.kind === "line") {
        const [from, to] = load.part ?? [low, high];
        gathering.line(id, Math.max(from, low), Math.min(to, high), scale(direction, amount.value), arm);
        return true;
      }
      if (amount.kind === "pressure") return false;
      const station = load.at.kind === "distance" ? load.at.value : (where ?? (low + high) / 2);
      if (amount.kind === "moment") gathering.point(id, station, [0, 0, 0], [0, 0, 0], scale(direction, amount.value));
      else gathering.point(id, station, scale(direction, amount.value), arm);
      return true;
    };

    for (const { id: name, kind } of frame.cases) {
      const still = new Gathering(known, shares);
      const moving: ActingCase[] = [];
      let roaming = 0;
      for (const load of frame.loads.filter((one) => one.case === name)) {
        for (const id of load.on) {
          const body = all.get(id);
          if (!body || !roams(load, id)) {
            const before = still.members.length;
            put(still, load, id);
            if (still.members.length === before) lost.push(load.ref.id);
            continue;
          }
          for (const [place, { station, words }] of roamingPlaces(body, known).entries()) {
            const gathering = new Gathering(known, shares);
            put(gathering, load, id, station);
            if (gathering.members.length === 0 && place === 0) lost.push(load.ref.id);
            const at = along(body.bar.from, body.axes.x, station);
            const loads = { members: gathering.members, nodes: gathering.nodes };
            moving.push({ name, kind, roams: { load: roaming, bar: id, words, at }, loads });
          }
          roaming += 1;
        }
      }
      if (moving.length === 0 || still.members.length > 0)
        cases.push({ name, kind, loads: { members: still.members, nodes: still.nodes } });
      cases.push(...moving);
    }
    return { cases, lost };
  },
});
