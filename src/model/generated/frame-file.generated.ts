// Generated from schema/ by `npm run generate`; do not edit.

/**
 * A moment or torque: a number in N·m (or lbf·in), or a string with its unit.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "moment".
 */
export type Moment = (number | string)
/**
 * A limit set for this frame or part: a value, a share of the span ("span / 300"), or a value with its basis.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "criterion".
 */
export type Criterion = ((number | string) | {
value: (number | string)
/**
 * Where the limit comes from.
 */
basis: string
})
/**
 * Connectors put on one end of a bar.
 * 
 * @minItems 1
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "kit".
 */
export type Kit = [KitItem, ...(KitItem)[]]
/**
 * A name without spaces, dots or slashes, unique in the file.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "id".
 */
export type Id = string
/**
 * A point [x, y, z] of the drawing; +z is up.
 * 
 * @minItems 3
 * @maxItems 3
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "point".
 */
export type Point = [Length, Length, Length]
/**
 * A direction [x, y, z]; its length does not matter.
 * 
 * @minItems 3
 * @maxItems 3
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "vector".
 */
export type Vector = [number, number, number]
/**
 * A direction [x, y, z]; its length does not matter.
 * 
 * @minItems 3
 * @maxItems 3
 */
export type Vector1 = [number, number, number]
/**
 * A face of a bar: the global direction it looks (when exactly one face looks that way within 5°); above, below, inner (towards the frame's middle), outer; or A to D, counted right-handed about the bar from the face that looks up at roll 0.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "face".
 */
export type Face = ("+x" | "-x" | "+y" | "-y" | "+z" | "-z" | "above" | "below" | "inner" | "outer" | "A" | "B" | "C" | "D")
/**
 * A length: a number in mm (or in), or a string with its unit.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "length".
 */
export type Length = (number | string)
/**
 * The id of a part of this frame.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "ref".
 */
export type Ref = string
/**
 * A point [x, y, z] of the drawing; +z is up.
 * 
 * @minItems 3
 * @maxItems 3
 */
export type Point1 = [Length, Length, Length]
/**
 * A point [x, y, z] of the drawing; +z is up.
 * 
 * @minItems 3
 * @maxItems 3
 */
export type Point2 = [Length, Length, Length]
/**
 * An edge of a panel: free, or the bar that holds it.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "panelEdge".
 */
export type PanelEdge = ("free" | {
/**
 * The id of a part of this frame.
 */
bar: string
/**
 * Which slot, where the side that looks at the panel has several.
 */
slot?: (("+x" | "-x" | "+y" | "-y" | "+z" | "-z" | "all") | number)
})
/**
 * A point [x, y, z] of the drawing; +z is up.
 * 
 * @minItems 3
 * @maxItems 3
 */
export type Point3 = [Length, Length, Length]
/**
 * A point [x, y, z] of the drawing; +z is up.
 * 
 * @minItems 3
 * @maxItems 3
 */
export type Point4 = [Length, Length, Length]
/**
 * A mass: a number in kg (or lb), or a string with its unit.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "massValue".
 */
export type MassValue = (number | string)
/**
 * A point [x, y, z] of the drawing; +z is up.
 * 
 * @minItems 3
 * @maxItems 3
 */
export type Point5 = [Length, Length, Length]
/**
 * A point [x, y, z] of the drawing; +z is up.
 * 
 * @minItems 3
 * @maxItems 3
 */
export type Point6 = [Length, Length, Length]
/**
 * A point [x, y, z] of the drawing; +z is up.
 * 
 * @minItems 3
 * @maxItems 3
 */
export type Point7 = [Length, Length, Length]
/**
 * An angle: a number in degrees, or a string with its unit.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "angle".
 */
export type Angle = (number | string)
/**
 * A force: a number in N (or lbf), or a string with its unit.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "force".
 */
export type Force = (number | string)
/**
 * A pressure: a number in kPa (or psi), or a string with its unit.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "pressure".
 */
export type Pressure = (number | string)
/**
 * A force per length: a number in N/mm (or lbf/in), or a string with its unit.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "lineLoad".
 */
export type LineLoad = (number | string)
/**
 * A temperature: a number in °C (or °F), or a string with its unit.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "temperature".
 */
export type Temperature = (number | string)
/**
 * A frequency: a number in Hz, or a string with its unit.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "frequency".
 */
export type Frequency = (number | string)
/**
 * A direction of the drawing: one of +x -x +y -y +z -z, or a vector.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "direction".
 */
export type Direction = (("+x" | "-x" | "+y" | "-y" | "+z" | "-z") | Vector)
/**
 * Which of several slots or bores: the one furthest that way, its number counted along the face, or all.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "choice".
 */
export type Choice = (("+x" | "-x" | "+y" | "-y" | "+z" | "-z" | "all") | number)
/**
 * One end of a bar: from or to, as its two points are named.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "end".
 */
export type End = ("from" | "to")
/**
 * Which end of each bar: from, to or both.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "ends".
 */
export type Ends = ("from" | "to" | "both")

/**
 * One frame of T-slotted aluminium bars, format 1: what a drawing shows. Whatever can be derived (cut lengths, which bar an end meets, where screws and nuts land) is derived. +z is up.
 */
export interface FrameFile {
/**
 * Where an editor finds this schema.
 */
$schema?: string
/**
 * The version of this file format: 1.
 */
format: 1
/**
 * What the frame is, as its title block says.
 */
title: string
/**
 * Revision letter or number of the drawing.
 */
revision?: string
/**
 * Free words for the reader of the file; never inspected.
 */
notes?: (string | string[])
/**
 * What a bare number means. mm-N-kg: mm, N, N·m, kPa, N/mm, kg. in-lbf-lb: in, lbf, lbf·in, psi, lbf/in, lb. Angles are degrees in both. A string carries its own unit: "30 in", "12 N·m".
 */
units: ("mm-N-kg" | "in-lbf-lb")
/**
 * Stock files of the team, relative to this file; later files replace earlier parts of the same name and the built-in ones.
 */
stock?: string[]
defaults?: Defaults
site?: Site
floor?: Floor
/**
 * How strength is judged: partial-factors (loads and strengths each with a factor of their own; usual), or allowable-stress (loads at their own size, strengths divided by a safety factor).
 */
method?: ("partial-factors" | "allowable-stress")
criteria?: Criteria
/**
 * Named sets of connectors that many joints share.
 */
kits?: {
[k: string]: Kit | undefined
}
/**
 * The bars.
 * 
 * @minItems 1
 */
bars: [Bar, ...(Bar)[]]
/**
 * What fastens bar ends to the bars they meet.
 */
joints?: Joint[]
/**
 * Plates and brackets placed by a point and a face, holding two or more bars.
 */
fastenings?: Fastening[]
/**
 * Parts that hold bars lying side by side.
 */
ties?: Tie[]
/**
 * Joints meant to turn about one axis.
 */
pivots?: Pivot[]
/**
 * Sheets in slots, on faces or laid on bars.
 */
panels?: Panel[]
/**
 * Groups that swing on hinges.
 */
doors?: Door[]
/**
 * Feet and casters.
 */
stands?: Stand[]
/**
 * Equipment and goods the frame carries.
 */
masses?: Mass[]
/**
 * Forces and pressures, each in a load case.
 */
loads?: Load[]
/**
 * What is known about load cases named by loads; a case not listed here is variable.
 */
cases?: LoadCase[]
/**
 * Sub-assemblies built on the table and lifted whole.
 */
groups?: Group[]
/**
 * Volumes a person must not reach.
 */
zones?: Zone[]
/**
 * Parts repeated by shift, mirror or turn.
 */
copies?: Copy[]
}
/**
 * What holds for every part that does not say otherwise.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "defaults".
 */
export interface Defaults {
/**
 * butt (the standard): an end drawn to another bar's centreline is cut at the face it meets. as-drawn: the points are the cut ends.
 */
cut?: ("butt" | "as-drawn")
/**
 * Kind of T-nut under a screw; standard end-load.
 */
nut?: ("end-load" | "drop-in")
/**
 * Tightening torque; rated (the standard) takes it from stock.
 */
torque?: ("rated" | Moment)
/**
 * Edge of cut ends; standard deburred.
 */
ends?: ("deburred" | "raw")
/**
 * Caps on ends that nothing else closes; standard all-open-ends.
 */
caps?: ("all-open-ends" | "none")
/**
 * What keeps screws from loosening; standard none.
 */
lock?: ("none" | "thread-lock" | "washer")
}
/**
 * Where the frame will stand.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "site".
 */
export interface Site {
/**
 * Standard indoors.
 */
place?: ("indoors" | "outdoors")
/**
 * Coldest and warmest; standard 5 to 35 °C indoors, -20 to 45 °C outdoors.
 * 
 * @minItems 2
 * @maxItems 2
 */
temperature?: [Temperature, Temperature]
/**
 * Standard none.
 */
vibration?: ("none" | "light" | "strong")
/**
 * Who can touch the frame; standard trained.
 */
reach?: ("public" | "trained")
}
/**
 * The floor it stands on.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "floor".
 */
export interface Floor {
/**
 * Height of the floor in the drawing; standard 0.
 */
z?: (number | string)
/**
 * Slope as a ratio, or degrees; standard level.
 */
slope?: (string | number)
/**
 * How far one foot may stand high or low, or a wheel runs over an edge; standard even.
 */
uneven?: (number | string)
/**
 * Coefficient of friction between feet and floor; standard 0.3.
 */
friction?: number
}
/**
 * Limits set here instead of the usual ones, by criterion name; `trysquare rules` lists them.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "criteria".
 */
export interface Criteria {
[k: string]: Criterion | undefined
}
/**
 * One connector on a bar's end.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "kitItem".
 */
export interface KitItem {
/**
 * Name of a connector in stock.
 */
connector: string
/**
 * The face of the ending bar it sits on; brackets and end fasteners need it.
 */
on?: ("+x" | "-x" | "+y" | "-y" | "+z" | "-z" | "above" | "below" | "inner" | "outer" | "A" | "B" | "C" | "D")
/**
 * Which slot of that face, where it has several.
 */
slot?: (("+x" | "-x" | "+y" | "-y" | "+z" | "-z" | "all") | number)
/**
 * Which core bore of the end, for end screws, where it has several.
 */
bore?: (("+x" | "-x" | "+y" | "-y" | "+z" | "-z" | "all") | number)
/**
 * A screw of stock instead of the connector's own.
 */
screw?: string
/**
 * Kind of T-nut under its screws; standard defaults.nut.
 */
nut?: ("end-load" | "drop-in")
/**
 * Tightening torque of its screws; standard defaults.torque.
 */
torque?: ("rated" | Moment)
/**
 * What keeps its screws from loosening; standard defaults.lock.
 */
lock?: ("none" | "thread-lock" | "washer")
/**
 * Holes left without a screw, by their ids in stock.
 */
omit?: string[]
/**
 * Moves the connector sideways from the slot line, towards the face counted next (A to B to C to D).
 */
shift?: (number | string)
}
/**
 * One bar, drawn by two points on its centreline.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "bar".
 */
export interface Bar {
id: Id
/**
 * Name of a profile in stock.
 */
profile: string
from: Point
to: Point
/**
 * Where the long side of the section points (face A). Not together with roll.
 */
tall?: (("+x" | "-x" | "+y" | "-y" | "+z" | "-z") | Vector)
/**
 * Turn about from → to, right-handed, out of the usual position: face A as near to up as can be; on a vertical bar face A looks +x.
 */
roll?: (number | string)
/**
 * How the ends are cut and closed.
 */
ends?: {
from?: EndSpec
to?: EndSpec1
both?: EndSpec2
}
/**
 * Holes drilled across the bar.
 */
holes?: Hole[]
criteria?: Criteria
}
/**
 * The end at the from point.
 */
export interface EndSpec {
/**
 * butt: cut at the face of the bar the end is drawn into. as-drawn: square at the drawn point.
 */
cut?: ("butt" | "as-drawn")
/**
 * A name without spaces, dots or slashes, unique in the file.
 */
butt?: string
/**
 * A name without spaces, dots or slashes, unique in the file.
 */
mitre?: string
/**
 * Cut turned by this angle out of square, about the axis given.
 */
angle?: (number | string)
/**
 * The axis of angle.
 */
about?: (("+x" | "-x" | "+y" | "-y" | "+z" | "-z") | Vector)
plane?: Vector1
/**
 * A cap of stock, or none.
 */
cap?: string
/**
 * Edge of this cut; standard defaults.ends.
 */
edge?: ("deburred" | "raw")
}
/**
 * The end at the to point.
 */
export interface EndSpec1 {
/**
 * butt: cut at the face of the bar the end is drawn into. as-drawn: square at the drawn point.
 */
cut?: ("butt" | "as-drawn")
/**
 * A name without spaces, dots or slashes, unique in the file.
 */
butt?: string
/**
 * A name without spaces, dots or slashes, unique in the file.
 */
mitre?: string
/**
 * Cut turned by this angle out of square, about the axis given.
 */
angle?: (number | string)
/**
 * The axis of angle.
 */
about?: (("+x" | "-x" | "+y" | "-y" | "+z" | "-z") | Vector)
plane?: Vector1
/**
 * A cap of stock, or none.
 */
cap?: string
/**
 * Edge of this cut; standard defaults.ends.
 */
edge?: ("deburred" | "raw")
}
/**
 * Both ends alike.
 */
export interface EndSpec2 {
/**
 * butt: cut at the face of the bar the end is drawn into. as-drawn: square at the drawn point.
 */
cut?: ("butt" | "as-drawn")
/**
 * A name without spaces, dots or slashes, unique in the file.
 */
butt?: string
/**
 * A name without spaces, dots or slashes, unique in the file.
 */
mitre?: string
/**
 * Cut turned by this angle out of square, about the axis given.
 */
angle?: (number | string)
/**
 * The axis of angle.
 */
about?: (("+x" | "-x" | "+y" | "-y" | "+z" | "-z") | Vector)
plane?: Vector1
/**
 * A cap of stock, or none.
 */
cap?: string
/**
 * Edge of this cut; standard defaults.ends.
 */
edge?: ("deburred" | "raw")
}
/**
 * A drilled hole.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "hole".
 */
export interface Hole {
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
at: (number | string)
on: Face
diameter: Length
/**
 * Through the whole bar (standard) or only the near wall.
 */
through?: boolean
}
/**
 * Fastens the named ends to the bars they meet.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "joint".
 */
export interface Joint {
/**
 * A name without spaces, dots or slashes, unique in the file.
 */
id?: string
/**
 * The bars whose ends are fastened; "rail-1/to" names one end.
 * 
 * @minItems 1
 */
bars: [Ref, ...(Ref)[]]
/**
 * Which ends of the bars named whole; standard both.
 */
ends?: ("from" | "to" | "both")
/**
 * The id of a part of this frame.
 */
onto?: string
/**
 * Name of a kit, or connectors.
 */
by: (string | Kit)
}
/**
 * A plate or bracket placed by hand.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "fastening".
 */
export interface Fastening {
id?: Id
/**
 * Name of a connector in stock.
 */
part: string
/**
 * A face of a bar: the global direction it looks (when exactly one face looks that way within 5°); above, below, inner (towards the frame's middle), outer; or A to D, counted right-handed about the bar from the face that looks up at roll 0.
 */
on: ("+x" | "-x" | "+y" | "-y" | "+z" | "-z" | "above" | "below" | "inner" | "outer" | "A" | "B" | "C" | "D")
/**
 * A face of a bar: the global direction it looks (when exactly one face looks that way within 5°); above, below, inner (towards the frame's middle), outer; or A to D, counted right-handed about the bar from the face that looks up at roll 0.
 */
against?: ("+x" | "-x" | "+y" | "-y" | "+z" | "-z" | "above" | "below" | "inner" | "outer" | "A" | "B" | "C" | "D")
at: Point1
/**
 * Turn of a plate about the outward normal of its face, from the direction of the first bar.
 */
turn?: (number | string)
/**
 * The bars it holds together; the first carries the face named by on.
 * 
 * @minItems 1
 */
holds: [Ref, ...(Ref)[]]
/**
 * A screw of stock instead of the connector's own.
 */
screw?: string
/**
 * Kind of T-nut under its screws; standard defaults.nut.
 */
nut?: ("end-load" | "drop-in")
/**
 * Tightening torque of its screws; standard defaults.torque.
 */
torque?: ("rated" | Moment)
/**
 * What keeps its screws from loosening; standard defaults.lock.
 */
lock?: ("none" | "thread-lock" | "washer")
/**
 * Holes left without a screw.
 */
omit?: string[]
}
/**
 * Holds two bars that lie side by side.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "tie".
 */
export interface Tie {
id?: Id
/**
 * The two bars, side by side; the heads lie in the slot of the first, and the key goes through holes across it.
 * 
 * @minItems 2
 * @maxItems 2
 */
bars: [Ref, Ref]
/**
 * A side tie of stock.
 */
part: string
/**
 * Distances from the from end of the first bar.
 * 
 * @minItems 1
 */
at: [Length, ...(Length)[]]
}
/**
 * A joint meant to turn.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "pivot".
 */
export interface Pivot {
id?: Id
/**
 * The two bars that turn against each other.
 * 
 * @minItems 2
 * @maxItems 2
 */
bars: [Ref, Ref]
/**
 * A pivot or hinge of stock, for bars with two faces in one plane. For bars that cross, face on face, a side tie: its screw runs along the axis, the head in the slot of the bar named first, the key through a hole across that bar.
 */
part: string
at: Point2
/**
 * The direction it turns about.
 */
axis: (("+x" | "-x" | "+y" | "-y" | "+z" | "-z") | Vector)
/**
 * Clamped in use; standard false.
 */
locked?: boolean
}
/**
 * A sheet.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "panel".
 */
export interface Panel {
id: Id
/**
 * Name of a sheet in stock.
 */
sheet: string
/**
 * in-slot: edges in the slots of bars. on-face: screwed to faces. laid: resting on bars, held by its weight.
 */
held: ("in-slot" | "on-face" | "laid")
/**
 * For in-slot: the bars round the panel in order.
 * 
 * @minItems 2
 */
edges?: [PanelEdge, PanelEdge, ...(PanelEdge)[]]
/**
 * For on-face and laid: the bars it lies on; it covers the rectangle round their faces, its sides along the bars.
 * 
 * @minItems 1
 */
bars?: [Ref, ...(Ref)[]]
/**
 * For on-face and laid: the side of the bars it lies on; standard +z for laid.
 */
on?: (("+x" | "-x" | "+y" | "-y" | "+z" | "-z") | Vector)
/**
 * How far it stands past the bars: towards −, + of the side nearest to the first in-plane axis, then −, + of the other (x before y before z).
 * 
 * @minItems 4
 * @maxItems 4
 */
overhang?: [Length, Length, Length, Length]
/**
 * Name of a gasket in stock.
 */
gasket?: string
/**
 * Screws of an on-face panel, at most this far apart.
 */
screws?: {
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
pitch: (number | string)
/**
 * A screw of stock.
 */
screw?: string
}
/**
 * Size as ordered, along the first in-plane axis, then the second (x before y before z); derived when left out.
 * 
 * @minItems 2
 * @maxItems 2
 */
size?: [Length, Length]
/**
 * Notches as cut in all four corners: along the first in-plane axis, then the second, as size.
 * 
 * @minItems 2
 * @maxItems 2
 */
notches?: [Length, Length]
criteria?: Criteria
}
/**
 * Parts that swing together.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "door".
 */
export interface Door {
id: Id
/**
 * The bars that swing.
 * 
 * @minItems 1
 */
bars: [Ref, ...(Ref)[]]
/**
 * The panels that swing with them.
 */
panels?: Ref[]
/**
 * The direction the hinges turn about.
 */
axis: (("+x" | "-x" | "+y" | "-y" | "+z" | "-z") | Vector)
/**
 * What the door hangs on.
 * 
 * @minItems 1
 */
hinges: [{
/**
 * A hinge of stock.
 */
part: string
/**
 * Door bar first, then the bar it hangs on.
 * 
 * @minItems 2
 * @maxItems 2
 */
bars: [Ref, Ref]
at: Point3
}, ...({
/**
 * A hinge of stock.
 */
part: string
/**
 * Door bar first, then the bar it hangs on.
 * 
 * @minItems 2
 * @maxItems 2
 */
bars: [Ref, Ref]
at: Point3
})[]]
/**
 * What holds the door shut.
 */
latch?: {
/**
 * A pivot of stock that holds the door shut.
 */
part: string
/**
 * Door bar first, then the bar it is held to.
 * 
 * @minItems 2
 * @maxItems 2
 */
bars: [Ref, Ref]
at: Point4
}
/**
 * Shut and fully open, right-handed about axis.
 * 
 * @minItems 2
 * @maxItems 2
 */
swing: [Angle, Angle]
}
/**
 * Feet or casters under bar ends.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "stand".
 */
export interface Stand {
/**
 * A name without spaces, dots or slashes, unique in the file.
 */
id?: string
/**
 * A foot or caster of stock.
 */
part: string
/**
 * One stand under each of these bars; "leg-1/from" names the end too.
 * 
 * @minItems 1
 */
bars: [Ref, ...(Ref)[]]
/**
 * Which end; the lower one when left out.
 */
end?: ("from" | "to")
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
raise?: (number | string)
/**
 * rest on the floor (standard for feet), anchored to it, or to the wall or ceiling that the end looks at, or rolling (standard for casters).
 */
hold?: ("rest" | "anchored" | "rolling")
/**
 * Whether the caster has its brake set in use.
 */
brake?: boolean
}
/**
 * A thing of weight.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "mass".
 */
export interface Mass {
id: Id
mass: MassValue
centre: Point
/**
 * Its size along x, y, z.
 * 
 * @minItems 3
 * @maxItems 3
 */
box?: [Length, Length, Length]
/**
 * The bars or panels that carry it.
 * 
 * @minItems 1
 */
on: [Ref, ...(Ref)[]]
/**
 * Bolted down (standard) or taken off in use.
 */
fixed?: boolean
/**
 * Stiff as a block: it stands on the two ends of its box on each bar instead of evenly along it; standard false.
 */
rigid?: boolean
/**
 * Frequency at which it shakes the frame.
 */
shakes?: (number | string)
/**
 * A drawer, or what else is pulled out in use. The file draws it pushed in.
 */
slides?: {
by: Point5
/**
 * An interlock keeps the others in while it is out (standard); false: all that say so come out together.
 */
interlock?: boolean
}
}
/**
 * One load: give exactly one of force, line, pressure, moment.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "load".
 */
export interface Load {
id?: Id
/**
 * A name without spaces, dots or slashes, unique in the file.
 */
case: string
/**
 * The bar, panel or mass it acts on.
 */
on: (Ref | [Ref, ...(Ref)[]])
/**
 * A force, for each part named; on a panel on 100 mm square in its middle.
 */
force?: (number | string)
/**
 * A force per length of bar.
 */
line?: (number | string)
/**
 * A pressure on a panel.
 */
pressure?: (number | string)
/**
 * A moment or torque: a number in N·m (or lbf·in), or a string with its unit.
 */
moment?: (number | string)
/**
 * Where it points; standard -z.
 */
direction?: (("+x" | "-x" | "+y" | "-y" | "+z" | "-z") | Vector)
/**
 * Where along a bar, from its from point; middle (standard), or worst: roaming to where it does most harm.
 */
at?: (("middle" | "worst") | Length)
/**
 * The part of the bar a line load covers; the whole bar when left out.
 * 
 * @minItems 2
 * @maxItems 2
 */
part?: [Length, Length]
/**
 * A face of a bar: the global direction it looks (when exactly one face looks that way within 5°); above, below, inner (towards the frame's middle), outer; or A to D, counted right-handed about the bar from the face that looks up at roll 0.
 */
face?: ("+x" | "-x" | "+y" | "-y" | "+z" | "-z" | "above" | "below" | "inner" | "outer" | "A" | "B" | "C" | "D")
}
/**
 * A load case.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "loadCase".
 */
export interface LoadCase {
id: Id
/**
 * Standard variable.
 */
kind?: ("permanent" | "variable" | "accidental")
/**
 * Cases that never act together with this one; said of one of two, it holds for both.
 */
excludes?: Id[]
/**
 * What the case stands for, in words.
 */
about?: string
}
/**
 * A sub-assembly.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "group".
 */
export interface Group {
id: Id
/**
 * Bars, panels, doors, stands and masses; each is in one group at most.
 * 
 * @minItems 1
 */
parts: [Ref, ...(Ref)[]]
/**
 * It comes put together, bought or from an earlier frame, with the feet and equipment named: nothing of it is sawn, counted or tightened, and no more nuts can be laid into its closed slots.
 */
built?: boolean
}
/**
 * A volume that hurts.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "zone".
 */
export interface Zone {
id: Id
/**
 * Two opposite corners.
 * 
 * @minItems 2
 * @maxItems 2
 */
box: [Point, Point]
/**
 * How badly a person can be hurt in it.
 */
risk: ("low" | "high")
}
/**
 * Repeats parts; joints and stands of copied bars, and what needs only copied parts, are copied too. Exactly one of shift, mirror, turn.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "copy".
 */
export interface Copy {
/**
 * Bars, panels, masses, doors, groups or zones; also what an earlier entry made.
 * 
 * @minItems 1
 */
of: [Ref, ...(Ref)[]]
/**
 * Added to the ids; with times, the number of the copy is added too.
 */
suffix: string
shift?: Point6
/**
 * How many copies, each shifted or turned further; standard 1. Not with mirror.
 */
times?: number
/**
 * Each part is copied to the other side of a plane.
 */
mirror?: {
/**
 * The axis normal to the mirror.
 */
across: ("x" | "y" | "z")
/**
 * A length: a number in mm (or in), or a string with its unit.
 */
at: (number | string)
}
/**
 * How far each copy is turned on.
 */
turn?: {
/**
 * Direction of the axis.
 */
about: (("+x" | "-x" | "+y" | "-y" | "+z" | "-z") | Vector)
through: Point7
/**
 * An angle: a number in degrees, or a string with its unit.
 */
angle: (number | string)
}
}
/**
 * How one end is cut and closed. At most one of cut, butt, mitre, angle, plane.
 * 
 * This interface was referenced by `FrameFile`'s JSON-Schema
 * via the `definition` "endSpec".
 */
export interface EndSpec3 {
/**
 * butt: cut at the face of the bar the end is drawn into. as-drawn: square at the drawn point.
 */
cut?: ("butt" | "as-drawn")
/**
 * A name without spaces, dots or slashes, unique in the file.
 */
butt?: string
/**
 * A name without spaces, dots or slashes, unique in the file.
 */
mitre?: string
/**
 * Cut turned by this angle out of square, about the axis given.
 */
angle?: (number | string)
/**
 * The axis of angle.
 */
about?: (("+x" | "-x" | "+y" | "-y" | "+z" | "-z") | Vector)
plane?: Vector1
/**
 * A cap of stock, or none.
 */
cap?: string
/**
 * Edge of this cut; standard defaults.ends.
 */
edge?: ("deburred" | "raw")
}
