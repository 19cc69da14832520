// Generated from schema/ by `npm run generate`; do not edit.

/**
 * The name frames use; unique among parts of its kind.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "partName".
 */
export type PartName = string
/**
 * A stress or modulus: a number in MPa (or psi), or a string with its unit.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "stress".
 */
export type Stress = (number | string)
/**
 * A density: a number in kg/m³ (or lb/in³), or a string with its unit.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "density".
 */
export type Density = (number | string)
/**
 * Linear thermal expansion per kelvin, in both unit systems.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "expansion".
 */
export type Expansion = number
/**
 * Where the numbers come from: standard and table, test report, or how they were computed.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "source".
 */
export type Source = string
/**
 * One line for people.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "about".
 */
export type About = string
/**
 * Which nuts and lugs fit: parts of another slot size do not. The built-in sizes are 5, 6, 8, 10, 1/4 and 5/16.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "slotSize".
 */
export type SlotSize = string
/**
 * Wall class.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "weight".
 */
export type Weight = ("light" | "standard" | "heavy")
/**
 * A length: a number in mm (or in), or a string with its unit.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "length".
 */
export type Length = (number | string)
/**
 * Length along and width across the slot of the nut that the computed lip rating is for; as wide as twice the opening and as long as that when left out.
 * 
 * @minItems 2
 * @maxItems 2
 */
export type LengthPair = [Length, Length]
/**
 * A moment or torque: a number in N·m (or lbf·in), or a string with its unit.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "moment".
 */
export type Moment = (number | string)
/**
 * A bar's cross-section: generated from a series, or drawn.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "profile".
 */
export type Profile = (GeneratedProfile | DrawnProfile)
/**
 * A face of a bar: A looks along +y of the section, B +z, C −y, D −z.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "faceName".
 */
export type FaceName = ("A" | "B" | "C" | "D")
/**
 * The name of another part of stock.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "reference".
 */
export type Reference = string
/**
 * Outer boundary, slots included.
 * 
 * @minItems 3
 * @maxItems 5000
 */
export type Polygon = [LengthPair1, LengthPair1, LengthPair1, ...(LengthPair1)[]]
/**
 * Two lengths.
 * 
 * @minItems 2
 * @maxItems 2
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "lengthPair".
 */
export type LengthPair1 = [Length, Length]
/**
 * Corners [y, z] in order, not repeated at the end; the polygon must not cross itself.
 * 
 * @minItems 3
 * @maxItems 5000
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "polygon".
 */
export type Polygon1 = [LengthPair1, LengthPair1, LengthPair1, ...(LengthPair1)[]]
/**
 * Two lengths.
 * 
 * @minItems 2
 * @maxItems 2
 */
export type LengthPair2 = [Length, Length]
/**
 * Metric coarse thread, or inch size and threads per inch.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "thread".
 */
export type Thread = string
/**
 * A part that joins bars.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "connector".
 */
export type Connector = (Bracket | Plate | EndFastener | EndScrew | SideTie | Pivot)
/**
 * A rotational stiffness: a number in N·m/rad (or lbf·in/rad), or a string with its unit.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "rotationalStiffness".
 */
export type RotationalStiffness = (number | string)
/**
 * Two lengths.
 * 
 * @minItems 2
 * @maxItems 2
 */
export type LengthPair3 = [Length, Length]
/**
 * A mass: a number in kg (or lb), or a string with its unit.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "massValue".
 */
export type MassValue = (number | string)
/**
 * Corners [y, z] in order, not repeated at the end; the polygon must not cross itself.
 * 
 * @minItems 3
 * @maxItems 5000
 */
export type Polygon2 = [LengthPair1, LengthPair1, LengthPair1, ...(LengthPair1)[]]
/**
 * How a stand is fixed to a bar's end.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "mount".
 */
export type Mount = (StemMount | PlateMount)
/**
 * Two lengths.
 * 
 * @minItems 2
 * @maxItems 2
 */
export type LengthPair4 = [Length, Length]
/**
 * A force: a number in N (or lbf), or a string with its unit.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "force".
 */
export type Force = (number | string)
/**
 * Two lengths.
 * 
 * @minItems 2
 * @maxItems 2
 */
export type LengthPair5 = [Length, Length]
/**
 * An angle: a number in degrees, or a string with its unit.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "angle".
 */
export type Angle = (number | string)

/**
 * What a workshop can buy or cut, format 1: profiles, connectors, screws, nuts and the rest. A part replaces an earlier one of the same name, the built-in ones included.
 */
export interface StockFile {
/**
 * Where an editor finds this schema.
 */
$schema?: string
/**
 * The version of this file format: 1.
 */
format: 1
/**
 * What a bare number means. mm-N-kg: mm, N, N·m, MPa, kg, kg/m³. in-lbf-lb: in, lbf, lbf·in, psi, lb, lb/in³. Angles are degrees in both. A string carries its own unit: "30 in", "12 N·m".
 */
units: ("mm-N-kg" | "in-lbf-lb")
/**
 * Whose stock this is.
 */
title: string
/**
 * Free words for the reader of the file; never inspected.
 */
notes?: (string | string[])
/**
 * What profiles are made of.
 */
materials?: Material[]
/**
 * Cell geometry that generated profiles share.
 */
series?: Series[]
/**
 * Bars by their cross-section: generated from a series, or drawn.
 */
profiles?: Profile[]
/**
 * Brackets, plates, end fasteners, end screws, ties, pivots and hinges.
 */
connectors?: Connector[]
/**
 * Screws, one entry for all lengths of one kind.
 */
screws?: ScrewFamily[]
/**
 * T-nuts.
 */
nuts?: Nut[]
/**
 * Covers of cut ends.
 */
caps?: Cap[]
/**
 * Levelling feet and casters.
 */
stands?: StockStand[]
/**
 * Panel sheets, one entry for all thicknesses of one material.
 */
sheets?: SheetFamily[]
/**
 * Strips that hold a panel's edge in a slot.
 */
gaskets?: Gasket[]
/**
 * Keys and drivers, one entry for all sizes of one kind.
 */
tools?: ToolFamily[]
}
/**
 * An aluminium alloy and temper.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "material".
 */
export interface Material {
name: PartName
elasticModulus: Stress
shearModulus: Stress
density: Density
expansion: Expansion
/**
 * A stress or modulus: a number in MPa (or psi), or a string with its unit.
 */
proof: (number | string)
/**
 * A stress or modulus: a number in MPa (or psi), or a string with its unit.
 */
ultimate: (number | string)
/**
 * Buckling class of EN 1999-1-1.
 */
bucklingClass: ("A" | "B")
source: Source
}
/**
 * One square cell: pitch, slot, core, walls. Profiles are made by repeating it.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "series".
 */
export interface Series {
name: PartName
about?: About
/**
 * Side of a cell, and distance between slots.
 */
pitch: (number | string)
slotSize: SlotSize
weight: Weight
/**
 * Name of a material in stock.
 */
material: string
/**
 * Length bars are sold in.
 */
stockLength: (number | string)
slot: SlotGeometry
/**
 * Core bore of every cell; none when left out.
 */
bore?: {
diameter: Length
/**
 * Thread it can be tapped to.
 */
thread: string
}
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
cornerRadius?: (number | string)
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
cornerWall?: (number | string)
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
cellWall?: (number | string)
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
closedWall?: (number | string)
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
chordError?: (number | string)
/**
 * Tension a nut may put on the lips, from a test. Computed when left out; see ratedNut.
 */
lipRating?: (number | string)
/**
 * Where the numbers come from: standard and table, test report, or how they were computed.
 */
lipSource?: string
ratedNut?: LengthPair
torques?: Torques
}
/**
 * The T-shaped slot in the middle of every cell's face.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "slotGeometry".
 */
export interface SlotGeometry {
/**
 * Width between the lips.
 */
opening: (number | string)
/**
 * Thickness of the lips.
 */
lip: (number | string)
/**
 * Width behind the lips.
 */
cavity: (number | string)
/**
 * From the face to the slot floor.
 */
depth: (number | string)
/**
 * Least thickness of the diagonal webs between core and corners; the slot floor is tapered at 45° to leave it. Without it the cavity is a rectangle.
 */
web?: (number | string)
}
/**
 * Rated tightening torque by thread, for a nut in this profile's slot; computed from the lip rating when left out.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "torques".
 */
export interface Torques {
[k: string]: Moment | undefined
}
/**
 * Cells of a series side by side.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "generatedProfile".
 */
export interface GeneratedProfile {
kind: "generated"
name: PartName
about?: About
/**
 * Name of a series.
 */
series: string
/**
 * Cells across the width (along z).
 */
columns: number
/**
 * Cells over the height (along y).
 */
rows: number
/**
 * Faces whose slots are closed by a skin.
 * 
 * @minItems 1
 * @maxItems 4
 */
closed?: [FaceName]|[FaceName, FaceName]|[FaceName, FaceName, FaceName]|[FaceName, FaceName, FaceName, FaceName]
}
/**
 * A cross-section drawn corner by corner, [y, z] about the middle of its envelope: y out of face A, z out of face B.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "drawnProfile".
 */
export interface DrawnProfile {
kind: "drawn"
name: PartName
about?: About
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
pitch: (number | string)
slotSize: SlotSize
weight: Weight
material: Reference
stockLength: Length
/**
 * Tension a nut may put on the lips.
 */
lipRating: (number | string)
lipSource: Source
torques?: Torques
outline: Polygon
/**
 * Bores and hollows as polygons.
 */
holes?: Polygon1[]
/**
 * The slots the outline draws.
 */
slots: DrawnSlot[]
/**
 * Holes that can be tapped at a cut end.
 */
bores?: DrawnBore[]
}
/**
 * One slot of a drawn profile.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "drawnSlot".
 */
export interface DrawnSlot {
face: FaceName
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
across: (number | string)
opening: Length
lip: Length
depth: Length
cavity: Length
/**
 * Under a skin; standard false.
 */
closed?: boolean
}
/**
 * One bore of a drawn profile.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "drawnBore".
 */
export interface DrawnBore {
at: LengthPair2
diameter: Length
thread: Thread
}
/**
 * An angle in an inside corner. Leg a lies on the ending bar, leg b on the bar it meets.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "bracket".
 */
export interface Bracket {
kind: "bracket"
name: PartName
about?: About
slotSize: SlotSize
/**
 * Without screws and nuts.
 */
mass: (number | string)
tested?: Tested
/**
 * Leg a lies on the ending bar, leg b on the bar it meets.
 */
legs: {
a: LegSpec
b: LegSpec
}
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
width: (number | string)
/**
 * Side walls between the legs; standard 0.
 */
gussets?: number
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
gussetThickness?: (number | string)
/**
 * Lugs that fill the slot and resist turning; standard false.
 */
lugs?: boolean
/**
 * The name of another part of stock.
 */
screw: string
}
/**
 * Values from tests; they replace what is computed.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "tested".
 */
export interface Tested {
rotationalStiffness?: RotationalStiffness
/**
 * Slip load, design value.
 */
slip?: (number | string)
/**
 * A moment or torque: a number in N·m (or lbf·in), or a string with its unit.
 */
moment?: (number | string)
/**
 * Where the numbers come from: standard and table, test report, or how they were computed.
 */
reference: string
}
/**
 * One leg of a bracket.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "legSpec".
 */
export interface LegSpec {
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
length: (number | string)
thickness: Length
/**
 * Its screw holes.
 * 
 * @minItems 1
 */
holes: [HoleSpec, ...(HoleSpec)[]]
}
/**
 * A screw hole.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "holeSpec".
 */
export interface HoleSpec {
/**
 * a1, a2 … on leg a of a bracket, b1 … on leg b, h1 … on plates.
 */
id: string
at: LengthPair3
diameter: Length
}
/**
 * A flat plate on faces that lie in one plane.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "plate".
 */
export interface Plate {
kind: "plate"
name: PartName
about?: About
slotSize: SlotSize
mass: MassValue
tested?: Tested
outline: Polygon2
thickness: Length
/**
 * Its screw holes.
 * 
 * @minItems 1
 */
holes: [HoleSpec, ...(HoleSpec)[]]
screw: Reference
}
/**
 * Sits in a slot of the ending bar and pulls its cut end against the bar it meets.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "endFastener".
 */
export interface EndFastener {
kind: "end-fastener"
name: PartName
about?: About
slotSize: SlotSize
mass: MassValue
tested?: Tested
/**
 * The name of another part of stock.
 */
screw: string
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
depth: (number | string)
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
keyFrom: (number | string)
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
keyHole: (number | string)
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
body: (number | string)
/**
 * A claw or lug keeps the end from turning; standard false.
 */
lugs?: boolean
}
/**
 * A screw along the ending bar's axis into its tapped core bore.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "endScrew".
 */
export interface EndScrew {
kind: "end-screw"
name: PartName
about?: About
slotSize: SlotSize
mass: MassValue
tested?: Tested
screw: Reference
/**
 * Behind the lips of the crossing bar's slot, or on its far face.
 */
head: ("in-slot" | "on-far-face")
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
accessHole: (number | string)
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
engagement: (number | string)
}
/**
 * Holds two bars that lie side by side, from slot to slot.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "sideTie".
 */
export interface SideTie {
kind: "side-tie"
name: PartName
about?: About
slotSize: SlotSize
mass: MassValue
tested?: Tested
screw: Reference
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
accessHole?: (number | string)
/**
 * Fills both slots and so carries shear; standard false.
 */
lugs?: boolean
}
/**
 * Turns about one axis by design. A pivot can be locked; a hinge has one leaf on the door and one on the bar it hangs on.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "pivot".
 */
export interface Pivot {
/**
 * pivot: can be locked. hinge: hangs a door.
 */
kind: ("pivot" | "hinge")
name: PartName
about?: About
slotSize: SlotSize
mass: MassValue
tested?: Tested
screw: Reference
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
gap: (number | string)
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
thickness: (number | string)
/**
 * Its screw holes, on both leaves.
 * 
 * @minItems 1
 */
holes: [HoleSpec, ...(HoleSpec)[]]
}
/**
 * Screws that differ only in length.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "screwFamily".
 */
export interface ScrewFamily {
/**
 * The name frames use; unique among parts of its kind.
 */
name: string
thread: Thread
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
diameter: (number | string)
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
pitch: (number | string)
/**
 * Shape of the head.
 */
head: ("cap" | "button" | "countersunk" | "hex" | "none")
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
headDiameter: (number | string)
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
headHeight: (number | string)
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
key: (number | string)
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
socketDepth: (number | string)
/**
 * Strength class.
 */
propertyClass: string
/**
 * A moment or torque: a number in N·m (or lbf·in), or a string with its unit.
 */
torque: (number | string)
/**
 * Lengths in stock: under the head, or over all for countersunk heads.
 * 
 * @minItems 1
 */
lengths: [Length, ...(Length)[]]
source: Source
}
/**
 * A T-nut.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "nut".
 */
export interface Nut {
name: PartName
/**
 * end-load: pushed in from a cut end. drop-in: put through the opening anywhere.
 */
kind: ("end-load" | "drop-in")
slotSize: SlotSize
thread: Thread
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
length: (number | string)
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
width: (number | string)
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
thickness: (number | string)
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
engagement: (number | string)
}
/**
 * A cover for the cut end of the profiles named.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "cap".
 */
export interface Cap {
name: PartName
/**
 * Names of profiles it closes.
 * 
 * @minItems 1
 */
profiles: [Reference, ...(Reference)[]]
thickness: Length
mass: MassValue
}
/**
 * A levelling foot or a caster.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "stockStand".
 */
export interface StockStand {
name: PartName
/**
 * foot: stands. caster: rolls.
 */
kind: ("foot" | "caster")
mount: Mount
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
diameter: (number | string)
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
collar: (number | string)
raise: LengthPair4
capacity: Force
/**
 * Standard false.
 */
brake?: boolean
/**
 * Turns about the upright axis; standard false.
 */
swivel?: boolean
mass: MassValue
}
/**
 * A threaded stem in the tapped core bore.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "stemMount".
 */
export interface StemMount {
by: "stem"
thread: Thread
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
engagement: (number | string)
}
/**
 * A plate under the bar's end.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "plateMount".
 */
export interface PlateMount {
by: "plate"
size: LengthPair1
thickness: Length
/**
 * Its screw holes, from the middle of the plate along its size; each is screwed into a core bore. Where left out, the plate is taken to be drilled to suit the bar.
 * 
 * @minItems 1
 */
holes?: [HoleSpec, ...(HoleSpec)[]]
}
/**
 * Sheets of one material.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "sheetFamily".
 */
export interface SheetFamily {
/**
 * The name frames use; unique among parts of its kind.
 */
name: string
/**
 * Thicknesses in stock.
 * 
 * @minItems 1
 */
thicknesses: [Length, ...(Length)[]]
elasticModulus: Stress
/**
 * Poisson's ratio.
 */
poisson: number
/**
 * A stress or modulus: a number in MPa (or psi), or a string with its unit.
 */
shearModulus?: (number | string)
density: Density
expansion: Expansion
/**
 * A stress or modulus: a number in MPa (or psi), or a string with its unit.
 */
strength: (number | string)
/**
 * By which share of its length it grows from dry to damp, in the direction that moves more; standard 0.
 */
moisture?: number
/**
 * Breaks without yielding.
 */
brittle: boolean
source: Source
}
/**
 * A strip between slot and panel edge.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "gasket".
 */
export interface Gasket {
name: PartName
slotSize: SlotSize
sheet: LengthPair5
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
depth: (number | string)
}
/**
 * One kind of key in several sizes.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "toolFamily".
 */
export interface ToolFamily {
/**
 * The name frames use; unique among parts of its kind.
 */
name: string
/**
 * How it reaches and swings.
 */
kind: ("hex-key" | "ball-end-key" | "t-handle" | "bit-ratchet" | "wrench")
/**
 * Least swing between two bites.
 */
swing: (number | string)
/**
 * Largest tilt in the socket; 0 for straight keys.
 */
tilt: (number | string)
/**
 * Sizes in the kit.
 * 
 * @minItems 1
 */
sizes: [ToolSize, ...(ToolSize)[]]
source: Source
}
/**
 * One size of a tool.
 * 
 * This interface was referenced by `StockFile`'s JSON-Schema
 * via the `definition` "toolSize".
 */
export interface ToolSize {
/**
 * As it goes into the name.
 */
size: string
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
key: (number | string)
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
longArm: (number | string)
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
shortArm: (number | string)
/**
 * A moment or torque: a number in N·m (or lbf·in), or a string with its unit.
 */
torque: (number | string)
}
