// Generated from schema/ by `npm run generate`; do not edit.
var __getOwnPropNames = Object.getOwnPropertyNames;
var __commonJS = (cb, mod) => function __require() {
  try {
    return mod || (0, cb[__getOwnPropNames(cb)[0]])((mod = { exports: {} }).exports, mod), mod.exports;
  } catch (e) {
    throw mod = 0, e;
  }
};

// node_modules/ajv/dist/runtime/ucs2length.js
var require_ucs2length = __commonJS({
  "node_modules/ajv/dist/runtime/ucs2length.js"(exports) {
    "use strict";
    Object.defineProperty(exports, "__esModule", { value: true });
    function ucs2length(str) {
      const len = str.length;
      let length = 0;
      let pos = 0;
      let value;
      while (pos < len) {
        length++;
        value = str.charCodeAt(pos++);
        if (value >= 55296 && value <= 56319 && pos < len) {
          value = str.charCodeAt(pos);
          if ((value & 64512) === 56320)
            pos++;
        }
      }
      return length;
    }
    exports.default = ucs2length;
    ucs2length.code = 'require("ajv/dist/runtime/ucs2length").default';
  }
});

// <stdin>
var whole = validate52;
var schema19 = { "$schema": "https://json-schema.org/draft/2020-12/schema", "$id": "https://trysquare.invalid/schema/frame-1.json", "title": "FrameFile", "description": "One frame of T-slotted aluminium bars, format 1: what a drawing shows. Whatever can be derived (cut lengths, which bar an end meets, where screws and nuts land) is derived. +z is up.", "type": "object", "required": ["format", "title", "units", "bars"], "additionalProperties": false, "properties": { "$schema": { "type": "string", "description": "Where an editor finds this schema." }, "format": { "const": 1, "description": "The version of this file format: 1." }, "title": { "type": "string", "minLength": 1, "maxLength": 200, "description": "What the frame is, as its title block says.", "examples": ["Potting bench, bay 3"] }, "revision": { "type": "string", "maxLength": 40, "description": "Revision letter or number of the drawing." }, "notes": { "description": "Free words for the reader of the file; never inspected.", "anyOf": [{ "type": "string" }, { "type": "array", "items": { "type": "string" } }] }, "units": { "enum": ["mm-N-kg", "in-lbf-lb"], "description": 'What a bare number means. mm-N-kg: mm, N, N\xB7m, kPa, N/mm, kg. in-lbf-lb: in, lbf, lbf\xB7in, psi, lbf/in, lb. Angles are degrees in both. A string carries its own unit: "30 in", "12 N\xB7m".' }, "stock": { "type": "array", "items": { "type": "string", "minLength": 1 }, "description": "Stock files of the team, relative to this file; later files replace earlier parts of the same name and the built-in ones.", "examples": [["./workshop.stock.json"]] }, "defaults": { "$ref": "#/$defs/defaults" }, "site": { "$ref": "#/$defs/site" }, "floor": { "$ref": "#/$defs/floor" }, "method": { "enum": ["partial-factors", "allowable-stress"], "x-expected": "partial-factors or allowable-stress", "description": "How strength is judged: partial-factors (loads and strengths each with a factor of their own; usual), or allowable-stress (loads at their own size, strengths divided by a safety factor)." }, "criteria": { "$ref": "#/$defs/criteria" }, "kits": { "type": "object", "description": "Named sets of connectors that many joints share.", "propertyNames": { "$ref": "#/$defs/id" }, "additionalProperties": { "$ref": "#/$defs/kit" }, "examples": [{ "corner": [{ "connector": "inside-bracket-40", "on": "below" }] }] }, "bars": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/bar" }, "description": "The bars." }, "joints": { "type": "array", "items": { "$ref": "#/$defs/joint" }, "description": "What fastens bar ends to the bars they meet." }, "fastenings": { "type": "array", "items": { "$ref": "#/$defs/fastening" }, "description": "Plates and brackets placed by a point and a face, holding two or more bars." }, "ties": { "type": "array", "items": { "$ref": "#/$defs/tie" }, "description": "Parts that hold bars lying side by side." }, "pivots": { "type": "array", "items": { "$ref": "#/$defs/pivot" }, "description": "Joints meant to turn about one axis." }, "panels": { "type": "array", "items": { "$ref": "#/$defs/panel" }, "description": "Sheets in slots, on faces or laid on bars." }, "doors": { "type": "array", "items": { "$ref": "#/$defs/door" }, "description": "Groups that swing on hinges." }, "stands": { "type": "array", "items": { "$ref": "#/$defs/stand" }, "description": "Feet and casters." }, "masses": { "type": "array", "items": { "$ref": "#/$defs/mass" }, "description": "Equipment and goods the frame carries." }, "loads": { "type": "array", "items": { "$ref": "#/$defs/load" }, "description": "Forces and pressures, each in a load case." }, "cases": { "type": "array", "items": { "$ref": "#/$defs/loadCase" }, "description": "What is known about load cases named by loads; a case not listed here is variable." }, "groups": { "type": "array", "items": { "$ref": "#/$defs/group" }, "description": "Sub-assemblies built on the table and lifted whole." }, "zones": { "type": "array", "items": { "$ref": "#/$defs/zone" }, "description": "Volumes a person must not reach." }, "copies": { "type": "array", "items": { "$ref": "#/$defs/copy" }, "description": "Parts repeated by shift, mirror or turn." } }, "$defs": { "id": { "type": "string", "pattern": "^[^\\s/.][^\\s/.]*$", "maxLength": 256, "description": "A name without spaces, dots or slashes, unique in the file.", "examples": ["rail-1"] }, "ref": { "type": "string", "minLength": 1, "maxLength": 256, "description": "The id of a part of this frame.", "examples": ["rail-1", "rail-1/to"] }, "length": { "type": ["number", "string"], "maxLength": 64, "description": "A length: a number in mm (or in), or a string with its unit.", "x-quantity": "length", "examples": [860, "30 in"] }, "angle": { "type": ["number", "string"], "maxLength": 64, "description": "An angle: a number in degrees, or a string with its unit.", "x-quantity": "angle", "examples": [30] }, "force": { "type": ["number", "string"], "maxLength": 64, "description": "A force: a number in N (or lbf), or a string with its unit.", "x-quantity": "force", "examples": [250, "250 lbf"] }, "moment": { "type": ["number", "string"], "maxLength": 64, "description": "A moment or torque: a number in N\xB7m (or lbf\xB7in), or a string with its unit.", "x-quantity": "moment", "examples": [12, "12 N\xB7m"] }, "pressure": { "type": ["number", "string"], "maxLength": 64, "description": "A pressure: a number in kPa (or psi), or a string with its unit.", "x-quantity": "pressure", "examples": [1.5, "1.5 kPa"] }, "lineLoad": { "type": ["number", "string"], "maxLength": 64, "description": "A force per length: a number in N/mm (or lbf/in), or a string with its unit.", "x-quantity": "lineLoad", "examples": [0.5] }, "massValue": { "type": ["number", "string"], "maxLength": 64, "description": "A mass: a number in kg (or lb), or a string with its unit.", "x-quantity": "mass", "examples": [35, "80 lb"] }, "temperature": { "type": ["number", "string"], "maxLength": 64, "description": "A temperature: a number in \xB0C (or \xB0F), or a string with its unit.", "x-quantity": "temperature", "examples": [20] }, "frequency": { "type": ["number", "string"], "maxLength": 64, "description": "A frequency: a number in Hz, or a string with its unit.", "x-quantity": "frequency", "examples": [25] }, "point": { "type": "array", "prefixItems": [{ "$ref": "#/$defs/length" }, { "$ref": "#/$defs/length" }, { "$ref": "#/$defs/length" }], "items": false, "minItems": 3, "maxItems": 3, "tsType": "[Length, Length, Length]", "description": "A point [x, y, z] of the drawing; +z is up.", "examples": [[20, 20, 860]] }, "vector": { "type": "array", "prefixItems": [{ "type": "number" }, { "type": "number" }, { "type": "number" }], "items": false, "minItems": 3, "maxItems": 3, "tsType": "[number, number, number]", "description": "A direction [x, y, z]; its length does not matter.", "examples": [[0, -0.5, 0.87]] }, "direction": { "anyOf": [{ "enum": ["+x", "-x", "+y", "-y", "+z", "-z"] }, { "$ref": "#/$defs/vector" }], "description": "A direction of the drawing: one of +x -x +y -y +z -z, or a vector.", "examples": ["+x", [1, 0, 1]], "x-expected": "one of +x, -x, +y, -y, +z, -z, or a vector [x, y, z]" }, "face": { "anyOf": [{ "enum": ["+x", "-x", "+y", "-y", "+z", "-z", "above", "below", "inner", "outer", "A", "B", "C", "D"] }], "description": "A face of a bar: the global direction it looks (when exactly one face looks that way within 5\xB0); above, below, inner (towards the frame's middle), outer; or A to D, counted right-handed about the bar from the face that looks up at roll 0.", "examples": ["below", "+y"] }, "choice": { "anyOf": [{ "enum": ["+x", "-x", "+y", "-y", "+z", "-z", "all"] }, { "type": "integer", "minimum": 1 }], "description": "Which of several slots or bores: the one furthest that way, its number counted along the face, or all.", "examples": ["+z", 2], "x-expected": "one of +x, -x, +y, -y, +z, -z, all, or a number from 1" }, "end": { "enum": ["from", "to"], "description": "One end of a bar: from or to, as its two points are named.", "examples": ["from"] }, "ends": { "enum": ["from", "to", "both"], "description": "Which end of each bar: from, to or both.", "examples": ["both"] }, "criterion": { "description": 'A limit set for this frame or part: a value, a share of the span ("span / 300"), or a value with its basis.', "anyOf": [{ "type": ["number", "string"], "maxLength": 64 }, { "type": "object", "required": ["value", "basis"], "additionalProperties": false, "properties": { "value": { "type": ["number", "string"], "maxLength": 64 }, "basis": { "type": "string", "minLength": 1, "maxLength": 400, "description": "Where the limit comes from." } } }], "examples": ["span / 500", { "value": "2 mm", "basis": "customer drawing" }] }, "criteria": { "type": "object", "description": "Limits set here instead of the usual ones, by criterion name; `trysquare rules` lists them.", "additionalProperties": { "$ref": "#/$defs/criterion" }, "examples": [{ "joint-gap": "0.3 mm" }] }, "defaults": { "type": "object", "additionalProperties": false, "description": "What holds for every part that does not say otherwise.", "properties": { "cut": { "enum": ["butt", "as-drawn"], "description": "butt (the standard): an end drawn to another bar's centreline is cut at the face it meets. as-drawn: the points are the cut ends." }, "nut": { "enum": ["end-load", "drop-in"], "description": "Kind of T-nut under a screw; standard end-load." }, "torque": { "anyOf": [{ "const": "rated" }, { "$ref": "#/$defs/moment" }], "description": "Tightening torque; rated (the standard) takes it from stock." }, "ends": { "enum": ["deburred", "raw"], "description": "Edge of cut ends; standard deburred." }, "caps": { "enum": ["all-open-ends", "none"], "description": "Caps on ends that nothing else closes; standard all-open-ends." }, "lock": { "enum": ["none", "thread-lock", "washer"], "description": "What keeps screws from loosening; standard none." } } }, "site": { "type": "object", "additionalProperties": false, "description": "Where the frame will stand.", "properties": { "place": { "enum": ["indoors", "outdoors"], "description": "Standard indoors." }, "temperature": { "type": "array", "prefixItems": [{ "$ref": "#/$defs/temperature" }, { "$ref": "#/$defs/temperature" }], "items": false, "minItems": 2, "maxItems": 2, "tsType": "[Temperature, Temperature]", "description": "Coldest and warmest; standard 5 to 35 \xB0C indoors, -20 to 45 \xB0C outdoors." }, "vibration": { "enum": ["none", "light", "strong"], "description": "Standard none." }, "reach": { "enum": ["public", "trained"], "description": "Who can touch the frame; standard trained." } } }, "floor": { "type": "object", "additionalProperties": false, "description": "The floor it stands on.", "properties": { "z": { "$ref": "#/$defs/length", "description": "Height of the floor in the drawing; standard 0." }, "slope": { "type": ["string", "number"], "maxLength": 64, "description": "Slope as a ratio, or degrees; standard level.", "examples": ["1:100"] }, "uneven": { "$ref": "#/$defs/length", "description": "How far one foot may stand high or low, or a wheel runs over an edge; standard even." }, "friction": { "type": "number", "minimum": 0, "maximum": 2, "description": "Coefficient of friction between feet and floor; standard 0.3." } } }, "kit": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/kitItem" }, "description": "Connectors put on one end of a bar." }, "kitItem": { "type": "object", "required": ["connector"], "additionalProperties": false, "description": "One connector on a bar's end.", "properties": { "connector": { "type": "string", "minLength": 1, "description": "Name of a connector in stock.", "examples": ["inside-bracket-40"] }, "on": { "$ref": "#/$defs/face", "description": "The face of the ending bar it sits on; brackets and end fasteners need it." }, "slot": { "$ref": "#/$defs/choice", "description": "Which slot of that face, where it has several." }, "bore": { "$ref": "#/$defs/choice", "description": "Which core bore of the end, for end screws, where it has several." }, "screw": { "type": "string", "description": "A screw of stock instead of the connector's own." }, "nut": { "enum": ["end-load", "drop-in"], "description": "Kind of T-nut under its screws; standard defaults.nut." }, "torque": { "anyOf": [{ "const": "rated" }, { "$ref": "#/$defs/moment" }], "description": "Tightening torque of its screws; standard defaults.torque." }, "lock": { "enum": ["none", "thread-lock", "washer"], "description": "What keeps its screws from loosening; standard defaults.lock." }, "omit": { "type": "array", "items": { "type": "string" }, "description": "Holes left without a screw, by their ids in stock.", "examples": [["a2"]] }, "shift": { "$ref": "#/$defs/length", "description": "Moves the connector sideways from the slot line, towards the face counted next (A to B to C to D)." } } }, "endSpec": { "type": "object", "additionalProperties": false, "description": "How one end is cut and closed. At most one of cut, butt, mitre, angle, plane.", "properties": { "cut": { "enum": ["butt", "as-drawn"], "description": "butt: cut at the face of the bar the end is drawn into. as-drawn: square at the drawn point." }, "butt": { "$ref": "#/$defs/id", "description": "Cut at the face of this bar." }, "mitre": { "$ref": "#/$defs/id", "description": "Mitred against this bar." }, "angle": { "$ref": "#/$defs/angle", "description": "Cut turned by this angle out of square, about the axis given." }, "about": { "$ref": "#/$defs/direction", "description": "The axis of angle." }, "plane": { "$ref": "#/$defs/vector", "description": "Outward normal of the cut, through the drawn point." }, "cap": { "type": "string", "minLength": 1, "description": "A cap of stock, or none." }, "edge": { "enum": ["deburred", "raw"], "description": "Edge of this cut; standard defaults.ends." } } }, "bar": { "type": "object", "required": ["id", "profile", "from", "to"], "additionalProperties": false, "description": "One bar, drawn by two points on its centreline.", "properties": { "id": { "$ref": "#/$defs/id" }, "profile": { "type": "string", "minLength": 1, "description": "Name of a profile in stock.", "examples": ["40x40-8"] }, "from": { "$ref": "#/$defs/point" }, "to": { "$ref": "#/$defs/point" }, "tall": { "$ref": "#/$defs/direction", "description": "Where the long side of the section points (face A). Not together with roll." }, "roll": { "$ref": "#/$defs/angle", "description": "Turn about from \u2192 to, right-handed, out of the usual position: face A as near to up as can be; on a vertical bar face A looks +x." }, "ends": { "type": "object", "additionalProperties": false, "description": "How the ends are cut and closed.", "properties": { "from": { "$ref": "#/$defs/endSpec", "description": "The end at the from point." }, "to": { "$ref": "#/$defs/endSpec", "description": "The end at the to point." }, "both": { "$ref": "#/$defs/endSpec", "description": "Both ends alike." } } }, "holes": { "type": "array", "items": { "$ref": "#/$defs/hole" }, "description": "Holes drilled across the bar." }, "criteria": { "$ref": "#/$defs/criteria" } }, "examples": [{ "id": "rail-1", "profile": "40x40-8", "from": [20, 20, 840], "to": [1480, 20, 840] }] }, "hole": { "type": "object", "required": ["at", "on", "diameter"], "additionalProperties": false, "description": "A drilled hole.", "properties": { "at": { "$ref": "#/$defs/length", "description": "Distance from the from end as cut." }, "on": { "$ref": "#/$defs/face" }, "diameter": { "$ref": "#/$defs/length" }, "through": { "type": "boolean", "description": "Through the whole bar (standard) or only the near wall." } } }, "joint": { "type": "object", "required": ["bars", "by"], "additionalProperties": false, "description": "Fastens the named ends to the bars they meet.", "properties": { "id": { "$ref": "#/$defs/id", "description": "Only for a joint of one end; otherwise joints are named after bar and end: rail-1.from." }, "bars": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/ref" }, "description": 'The bars whose ends are fastened; "rail-1/to" names one end.' }, "ends": { "$ref": "#/$defs/ends", "description": "Which ends of the bars named whole; standard both." }, "onto": { "$ref": "#/$defs/ref", "description": "The bar the end meets, where it meets several and is not cut at one by name." }, "by": { "anyOf": [{ "type": "string", "minLength": 1 }, { "$ref": "#/$defs/kit" }], "description": "Name of a kit, or connectors.", "x-expected": "the name of a kit, or a list of connectors" } }, "examples": [{ "bars": ["rail-1", "rail-2"], "ends": "both", "by": "corner" }] }, "fastening": { "type": "object", "required": ["part", "on", "at", "holds"], "additionalProperties": false, "description": "A plate or bracket placed by hand.", "properties": { "id": { "$ref": "#/$defs/id" }, "part": { "type": "string", "minLength": 1, "description": "Name of a connector in stock." }, "on": { "$ref": "#/$defs/face", "description": "The face of the first bar held; a plate lies on it, a bracket has its first leg there." }, "against": { "$ref": "#/$defs/face", "description": "For a bracket: the face of the second bar held that carries the other leg." }, "at": { "$ref": "#/$defs/point", "description": "Where the part's own zero point comes to lie (brought into the face)." }, "turn": { "$ref": "#/$defs/angle", "description": "Turn of a plate about the outward normal of its face, from the direction of the first bar." }, "holds": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/ref" }, "description": "The bars it holds together; the first carries the face named by on." }, "screw": { "type": "string", "description": "A screw of stock instead of the connector's own." }, "nut": { "enum": ["end-load", "drop-in"], "description": "Kind of T-nut under its screws; standard defaults.nut." }, "torque": { "anyOf": [{ "const": "rated" }, { "$ref": "#/$defs/moment" }], "description": "Tightening torque of its screws; standard defaults.torque." }, "lock": { "enum": ["none", "thread-lock", "washer"], "description": "What keeps its screws from loosening; standard defaults.lock." }, "omit": { "type": "array", "items": { "type": "string" }, "description": "Holes left without a screw." } }, "examples": [{ "part": "plate-T-40", "on": "+y", "at": [0, -20, 800], "turn": 90, "holds": ["leg-1", "rail-1"], "omit": ["h5"] }] }, "tie": { "type": "object", "required": ["bars", "part", "at"], "additionalProperties": false, "description": "Holds two bars that lie side by side.", "properties": { "id": { "$ref": "#/$defs/id" }, "bars": { "type": "array", "items": { "$ref": "#/$defs/ref" }, "minItems": 2, "maxItems": 2, "tsType": "[Ref, Ref]", "description": "The two bars, side by side; the heads lie in the slot of the first, and the key goes through holes across it." }, "part": { "type": "string", "minLength": 1, "description": "A side tie of stock." }, "at": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/length" }, "description": "Distances from the from end of the first bar." } } }, "pivot": { "type": "object", "required": ["bars", "part", "at", "axis"], "additionalProperties": false, "description": "A joint meant to turn.", "properties": { "id": { "$ref": "#/$defs/id" }, "bars": { "type": "array", "items": { "$ref": "#/$defs/ref" }, "minItems": 2, "maxItems": 2, "tsType": "[Ref, Ref]", "description": "The two bars that turn against each other." }, "part": { "type": "string", "minLength": 1, "description": "A pivot or hinge of stock, for bars with two faces in one plane. For bars that cross, face on face, a side tie: its screw runs along the axis, the head in the slot of the bar named first, the key through a hole across that bar." }, "at": { "$ref": "#/$defs/point", "description": "A point on its axis; of pivots and hinges on the faces their leaves lie on." }, "axis": { "$ref": "#/$defs/direction", "description": "The direction it turns about." }, "locked": { "type": "boolean", "description": "Clamped in use; standard false." } } }, "panelEdge": { "anyOf": [{ "const": "free" }, { "type": "object", "required": ["bar"], "additionalProperties": false, "properties": { "bar": { "$ref": "#/$defs/ref", "description": "The bar whose slot holds this edge." }, "slot": { "$ref": "#/$defs/choice", "description": "Which slot, where the side that looks at the panel has several." } } }], "description": "An edge of a panel: free, or the bar that holds it.", "examples": ["free", { "bar": "post-1", "slot": 1 }], "x-expected": "free, or an object with bar and slot" }, "panel": { "type": "object", "required": ["id", "sheet", "held"], "additionalProperties": false, "description": "A sheet.", "properties": { "id": { "$ref": "#/$defs/id" }, "sheet": { "type": "string", "minLength": 1, "description": "Name of a sheet in stock.", "examples": ["polycarbonate-5"] }, "held": { "enum": ["in-slot", "on-face", "laid"], "description": "in-slot: edges in the slots of bars. on-face: screwed to faces. laid: resting on bars, held by its weight." }, "edges": { "type": "array", "minItems": 2, "items": { "$ref": "#/$defs/panelEdge" }, "description": "For in-slot: the bars round the panel in order." }, "bars": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/ref" }, "description": "For on-face and laid: the bars it lies on; it covers the rectangle round their faces, its sides along the bars." }, "on": { "$ref": "#/$defs/direction", "description": "For on-face and laid: the side of the bars it lies on; standard +z for laid." }, "overhang": { "type": "array", "items": { "$ref": "#/$defs/length" }, "minItems": 4, "maxItems": 4, "tsType": "[Length, Length, Length, Length]", "description": "How far it stands past the bars: towards \u2212, + of the side nearest to the first in-plane axis, then \u2212, + of the other (x before y before z)." }, "gasket": { "type": "string", "description": "Name of a gasket in stock." }, "screws": { "type": "object", "required": ["pitch"], "additionalProperties": false, "properties": { "pitch": { "$ref": "#/$defs/length", "description": "Greatest distance between two screws along a bar." }, "screw": { "type": "string", "description": "A screw of stock." } }, "description": "Screws of an on-face panel, at most this far apart." }, "size": { "type": "array", "items": { "$ref": "#/$defs/length" }, "minItems": 2, "maxItems": 2, "tsType": "[Length, Length]", "description": "Size as ordered, along the first in-plane axis, then the second (x before y before z); derived when left out." }, "notches": { "type": "array", "items": { "$ref": "#/$defs/length" }, "minItems": 2, "maxItems": 2, "tsType": "[Length, Length]", "description": "Notches as cut in all four corners: along the first in-plane axis, then the second, as size." }, "criteria": { "$ref": "#/$defs/criteria" } } }, "door": { "type": "object", "required": ["id", "bars", "hinges", "axis", "swing"], "additionalProperties": false, "description": "Parts that swing together.", "properties": { "id": { "$ref": "#/$defs/id" }, "bars": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/ref" }, "description": "The bars that swing." }, "panels": { "type": "array", "items": { "$ref": "#/$defs/ref" }, "description": "The panels that swing with them." }, "axis": { "$ref": "#/$defs/direction", "description": "The direction the hinges turn about." }, "hinges": { "type": "array", "minItems": 1, "description": "What the door hangs on.", "items": { "type": "object", "required": ["part", "bars", "at"], "additionalProperties": false, "properties": { "part": { "type": "string", "description": "A hinge of stock." }, "bars": { "type": "array", "items": { "$ref": "#/$defs/ref" }, "minItems": 2, "maxItems": 2, "tsType": "[Ref, Ref]", "description": "Door bar first, then the bar it hangs on." }, "at": { "$ref": "#/$defs/point", "description": "A point on the axis it turns about." } } } }, "latch": { "type": "object", "description": "What holds the door shut.", "required": ["part", "bars", "at"], "additionalProperties": false, "properties": { "part": { "type": "string", "description": "A pivot of stock that holds the door shut." }, "bars": { "type": "array", "items": { "$ref": "#/$defs/ref" }, "minItems": 2, "maxItems": 2, "tsType": "[Ref, Ref]", "description": "Door bar first, then the bar it is held to." }, "at": { "$ref": "#/$defs/point", "description": "Where it holds." } } }, "swing": { "type": "array", "items": { "$ref": "#/$defs/angle" }, "minItems": 2, "maxItems": 2, "tsType": "[Angle, Angle]", "description": "Shut and fully open, right-handed about axis." } } }, "stand": { "type": "object", "required": ["part", "bars"], "additionalProperties": false, "description": "Feet or casters under bar ends.", "properties": { "id": { "$ref": "#/$defs/id", "description": "Only for a single stand; otherwise named after bar and end: leg-1.foot." }, "part": { "type": "string", "minLength": 1, "description": "A foot or caster of stock.", "examples": ["foot-40-M8"] }, "bars": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/ref" }, "description": 'One stand under each of these bars; "leg-1/from" names the end too.' }, "end": { "$ref": "#/$defs/end", "description": "Which end; the lower one when left out." }, "raise": { "$ref": "#/$defs/length", "description": "Height it is set to, floor to bar end." }, "hold": { "enum": ["rest", "anchored", "rolling"], "description": "rest on the floor (standard for feet), anchored to it, or to the wall or ceiling that the end looks at, or rolling (standard for casters)." }, "brake": { "type": "boolean", "description": "Whether the caster has its brake set in use." } } }, "mass": { "type": "object", "required": ["id", "mass", "centre", "on"], "additionalProperties": false, "description": "A thing of weight.", "properties": { "id": { "$ref": "#/$defs/id" }, "mass": { "$ref": "#/$defs/massValue" }, "centre": { "$ref": "#/$defs/point" }, "box": { "type": "array", "items": { "$ref": "#/$defs/length" }, "minItems": 3, "maxItems": 3, "tsType": "[Length, Length, Length]", "description": "Its size along x, y, z." }, "on": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/ref" }, "description": "The bars or panels that carry it." }, "fixed": { "type": "boolean", "description": "Bolted down (standard) or taken off in use." }, "rigid": { "type": "boolean", "description": "Stiff as a block: it stands on the two ends of its box on each bar instead of evenly along it; standard false." }, "shakes": { "$ref": "#/$defs/frequency", "description": "Frequency at which it shakes the frame." }, "slides": { "type": "object", "required": ["by"], "additionalProperties": false, "description": "A drawer, or what else is pulled out in use. The file draws it pushed in.", "properties": { "by": { "$ref": "#/$defs/point", "description": "How far and which way its centre comes out, [x, y, z].", "examples": [[0, -450, 0]] }, "interlock": { "type": "boolean", "description": "An interlock keeps the others in while it is out (standard); false: all that say so come out together." } } } } }, "load": { "type": "object", "required": ["case", "on"], "additionalProperties": false, "description": "One load: give exactly one of force, line, pressure, moment.", "properties": { "id": { "$ref": "#/$defs/id" }, "case": { "$ref": "#/$defs/id", "description": "The load case it belongs to.", "examples": ["trays"] }, "on": { "anyOf": [{ "$ref": "#/$defs/ref" }, { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/ref" } }], "description": "The bar, panel or mass it acts on.", "x-expected": "the id of a part, or a list of ids" }, "force": { "$ref": "#/$defs/force", "description": "A force, for each part named; on a panel on 100 mm square in its middle." }, "line": { "$ref": "#/$defs/lineLoad", "description": "A force per length of bar." }, "pressure": { "$ref": "#/$defs/pressure", "description": "A pressure on a panel." }, "moment": { "$ref": "#/$defs/moment", "description": "A moment about direction." }, "direction": { "$ref": "#/$defs/direction", "description": "Where it points; standard -z." }, "at": { "anyOf": [{ "enum": ["middle", "worst"] }, { "$ref": "#/$defs/length" }], "description": "Where along a bar, from its from point; middle (standard), or worst: roaming to where it does most harm.", "x-expected": "middle, worst, or a length" }, "part": { "type": "array", "items": { "$ref": "#/$defs/length" }, "minItems": 2, "maxItems": 2, "tsType": "[Length, Length]", "description": "The part of the bar a line load covers; the whole bar when left out." }, "face": { "$ref": "#/$defs/face", "description": "The face it acts on; the centreline when left out." } }, "examples": [{ "case": "trays", "on": "top", "pressure": "1.5 kPa" }] }, "loadCase": { "type": "object", "required": ["id"], "additionalProperties": false, "description": "A load case.", "properties": { "id": { "$ref": "#/$defs/id" }, "kind": { "enum": ["permanent", "variable", "accidental"], "description": "Standard variable." }, "excludes": { "type": "array", "items": { "$ref": "#/$defs/id" }, "description": "Cases that never act together with this one; said of one of two, it holds for both." }, "about": { "type": "string", "description": "What the case stands for, in words." } } }, "group": { "type": "object", "required": ["id", "parts"], "additionalProperties": false, "description": "A sub-assembly.", "properties": { "id": { "$ref": "#/$defs/id" }, "parts": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/ref" }, "description": "Bars, panels, doors, stands and masses; each is in one group at most." }, "built": { "type": "boolean", "description": "It comes put together, bought or from an earlier frame, with the feet and equipment named: nothing of it is sawn, counted or tightened, and no more nuts can be laid into its closed slots." } } }, "zone": { "type": "object", "required": ["id", "box", "risk"], "additionalProperties": false, "description": "A volume that hurts.", "properties": { "id": { "$ref": "#/$defs/id" }, "box": { "type": "array", "items": { "$ref": "#/$defs/point" }, "minItems": 2, "maxItems": 2, "tsType": "[Point, Point]", "description": "Two opposite corners." }, "risk": { "enum": ["low", "high"], "description": "How badly a person can be hurt in it." } } }, "copy": { "type": "object", "required": ["of", "suffix"], "additionalProperties": false, "description": "Repeats parts; joints and stands of copied bars, and what needs only copied parts, are copied too. Exactly one of shift, mirror, turn.", "properties": { "of": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/ref" }, "description": "Bars, panels, masses, doors, groups or zones; also what an earlier entry made." }, "suffix": { "type": "string", "minLength": 1, "maxLength": 40, "pattern": "^[^\\s/.]+$", "description": "Added to the ids; with times, the number of the copy is added too." }, "shift": { "$ref": "#/$defs/point", "description": "How far each copy is moved on." }, "times": { "type": "integer", "minimum": 1, "maximum": 1e4, "description": "How many copies, each shifted or turned further; standard 1. Not with mirror." }, "mirror": { "type": "object", "description": "Each part is copied to the other side of a plane.", "required": ["across", "at"], "additionalProperties": false, "properties": { "across": { "enum": ["x", "y", "z"], "description": "The axis normal to the mirror." }, "at": { "$ref": "#/$defs/length", "description": "Where the mirror stands on that axis." } } }, "turn": { "type": "object", "description": "How far each copy is turned on.", "required": ["about", "through", "angle"], "additionalProperties": false, "properties": { "about": { "$ref": "#/$defs/direction", "description": "Direction of the axis." }, "through": { "$ref": "#/$defs/point", "description": "A point on the axis." }, "angle": { "$ref": "#/$defs/angle", "description": "Right-handed about the axis." } } } }, "examples": [{ "of": ["leg-1", "rail-1"], "mirror": { "across": "x", "at": 750 }, "suffix": "b" }] } } };
var func1 = Object.prototype.hasOwnProperty;
var func2 = require_ucs2length().default;
var schema20 = { "type": "object", "additionalProperties": false, "description": "What holds for every part that does not say otherwise.", "properties": { "cut": { "enum": ["butt", "as-drawn"], "description": "butt (the standard): an end drawn to another bar's centreline is cut at the face it meets. as-drawn: the points are the cut ends." }, "nut": { "enum": ["end-load", "drop-in"], "description": "Kind of T-nut under a screw; standard end-load." }, "torque": { "anyOf": [{ "const": "rated" }, { "$ref": "#/$defs/moment" }], "description": "Tightening torque; rated (the standard) takes it from stock." }, "ends": { "enum": ["deburred", "raw"], "description": "Edge of cut ends; standard deburred." }, "caps": { "enum": ["all-open-ends", "none"], "description": "Caps on ends that nothing else closes; standard all-open-ends." }, "lock": { "enum": ["none", "thread-lock", "washer"], "description": "What keeps screws from loosening; standard none." } } };
var schema21 = { "type": ["number", "string"], "maxLength": 64, "description": "A moment or torque: a number in N\xB7m (or lbf\xB7in), or a string with its unit.", "x-quantity": "moment", "examples": [12, "12 N\xB7m"] };
function validate54(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate54.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (!(typeof data == "number" && isFinite(data)) && typeof data !== "string") {
    validate54.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: schema21.type }, message: "must be number,string" }];
    return false;
  }
  if (errors === 0) {
    if (typeof data === "string") {
      if (func2(data) > 64) {
        validate54.errors = [{ instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" }];
        return false;
      }
    }
  }
  validate54.errors = vErrors;
  return errors === 0;
}
validate54.evaluated = { "dynamicProps": false, "dynamicItems": false };
function validate53(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate53.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      const _errs1 = errors;
      for (const key0 in data) {
        if (!(key0 === "cut" || key0 === "nut" || key0 === "torque" || key0 === "ends" || key0 === "caps" || key0 === "lock")) {
          validate53.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
          return false;
          break;
        }
      }
      if (_errs1 === errors) {
        if (data.cut !== void 0) {
          let data0 = data.cut;
          const _errs2 = errors;
          if (!(data0 === "butt" || data0 === "as-drawn")) {
            validate53.errors = [{ instancePath: instancePath + "/cut", schemaPath: "#/properties/cut/enum", keyword: "enum", params: { allowedValues: schema20.properties.cut.enum }, message: "must be equal to one of the allowed values" }];
            return false;
          }
          var valid0 = _errs2 === errors;
        } else {
          var valid0 = true;
        }
        if (valid0) {
          if (data.nut !== void 0) {
            let data1 = data.nut;
            const _errs3 = errors;
            if (!(data1 === "end-load" || data1 === "drop-in")) {
              validate53.errors = [{ instancePath: instancePath + "/nut", schemaPath: "#/properties/nut/enum", keyword: "enum", params: { allowedValues: schema20.properties.nut.enum }, message: "must be equal to one of the allowed values" }];
              return false;
            }
            var valid0 = _errs3 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.torque !== void 0) {
              let data2 = data.torque;
              const _errs4 = errors;
              const _errs5 = errors;
              let valid1 = false;
              const _errs6 = errors;
              if ("rated" !== data2) {
                const err0 = { instancePath: instancePath + "/torque", schemaPath: "#/properties/torque/anyOf/0/const", keyword: "const", params: { allowedValue: "rated" }, message: "must be equal to constant" };
                if (vErrors === null) {
                  vErrors = [err0];
                } else {
                  vErrors.push(err0);
                }
                errors++;
              }
              var _valid0 = _errs6 === errors;
              valid1 = valid1 || _valid0;
              const _errs7 = errors;
              if (!validate54(data2, { instancePath: instancePath + "/torque", parentData: data, parentDataProperty: "torque", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
                errors = vErrors.length;
              }
              var _valid0 = _errs7 === errors;
              valid1 = valid1 || _valid0;
              if (!valid1) {
                const err1 = { instancePath: instancePath + "/torque", schemaPath: "#/properties/torque/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                if (vErrors === null) {
                  vErrors = [err1];
                } else {
                  vErrors.push(err1);
                }
                errors++;
                validate53.errors = vErrors;
                return false;
              } else {
                errors = _errs5;
                if (vErrors !== null) {
                  if (_errs5) {
                    vErrors.length = _errs5;
                  } else {
                    vErrors = null;
                  }
                }
              }
              var valid0 = _errs4 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.ends !== void 0) {
                let data3 = data.ends;
                const _errs8 = errors;
                if (!(data3 === "deburred" || data3 === "raw")) {
                  validate53.errors = [{ instancePath: instancePath + "/ends", schemaPath: "#/properties/ends/enum", keyword: "enum", params: { allowedValues: schema20.properties.ends.enum }, message: "must be equal to one of the allowed values" }];
                  return false;
                }
                var valid0 = _errs8 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.caps !== void 0) {
                  let data4 = data.caps;
                  const _errs9 = errors;
                  if (!(data4 === "all-open-ends" || data4 === "none")) {
                    validate53.errors = [{ instancePath: instancePath + "/caps", schemaPath: "#/properties/caps/enum", keyword: "enum", params: { allowedValues: schema20.properties.caps.enum }, message: "must be equal to one of the allowed values" }];
                    return false;
                  }
                  var valid0 = _errs9 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.lock !== void 0) {
                    let data5 = data.lock;
                    const _errs10 = errors;
                    if (!(data5 === "none" || data5 === "thread-lock" || data5 === "washer")) {
                      validate53.errors = [{ instancePath: instancePath + "/lock", schemaPath: "#/properties/lock/enum", keyword: "enum", params: { allowedValues: schema20.properties.lock.enum }, message: "must be equal to one of the allowed values" }];
                      return false;
                    }
                    var valid0 = _errs10 === errors;
                  } else {
                    var valid0 = true;
                  }
                }
              }
            }
          }
        }
      }
    } else {
      validate53.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate53.errors = vErrors;
  return errors === 0;
}
validate53.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var schema22 = { "type": "object", "additionalProperties": false, "description": "Where the frame will stand.", "properties": { "place": { "enum": ["indoors", "outdoors"], "description": "Standard indoors." }, "temperature": { "type": "array", "prefixItems": [{ "$ref": "#/$defs/temperature" }, { "$ref": "#/$defs/temperature" }], "items": false, "minItems": 2, "maxItems": 2, "tsType": "[Temperature, Temperature]", "description": "Coldest and warmest; standard 5 to 35 \xB0C indoors, -20 to 45 \xB0C outdoors." }, "vibration": { "enum": ["none", "light", "strong"], "description": "Standard none." }, "reach": { "enum": ["public", "trained"], "description": "Who can touch the frame; standard trained." } } };
var schema23 = { "type": ["number", "string"], "maxLength": 64, "description": "A temperature: a number in \xB0C (or \xB0F), or a string with its unit.", "x-quantity": "temperature", "examples": [20] };
function validate58(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate58.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (!(typeof data == "number" && isFinite(data)) && typeof data !== "string") {
    validate58.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: schema23.type }, message: "must be number,string" }];
    return false;
  }
  if (errors === 0) {
    if (typeof data === "string") {
      if (func2(data) > 64) {
        validate58.errors = [{ instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" }];
        return false;
      }
    }
  }
  validate58.errors = vErrors;
  return errors === 0;
}
validate58.evaluated = { "dynamicProps": false, "dynamicItems": false };
function validate57(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate57.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      const _errs1 = errors;
      for (const key0 in data) {
        if (!(key0 === "place" || key0 === "temperature" || key0 === "vibration" || key0 === "reach")) {
          validate57.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
          return false;
          break;
        }
      }
      if (_errs1 === errors) {
        if (data.place !== void 0) {
          let data0 = data.place;
          const _errs2 = errors;
          if (!(data0 === "indoors" || data0 === "outdoors")) {
            validate57.errors = [{ instancePath: instancePath + "/place", schemaPath: "#/properties/place/enum", keyword: "enum", params: { allowedValues: schema22.properties.place.enum }, message: "must be equal to one of the allowed values" }];
            return false;
          }
          var valid0 = _errs2 === errors;
        } else {
          var valid0 = true;
        }
        if (valid0) {
          if (data.temperature !== void 0) {
            let data1 = data.temperature;
            const _errs3 = errors;
            if (errors === _errs3) {
              if (Array.isArray(data1)) {
                if (data1.length > 2) {
                  validate57.errors = [{ instancePath: instancePath + "/temperature", schemaPath: "#/properties/temperature/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" }];
                  return false;
                } else {
                  if (data1.length < 2) {
                    validate57.errors = [{ instancePath: instancePath + "/temperature", schemaPath: "#/properties/temperature/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" }];
                    return false;
                  } else {
                    const len0 = data1.length;
                    if (len0 > 0) {
                      const _errs6 = errors;
                      if (!validate58(data1[0], { instancePath: instancePath + "/temperature/0", parentData: data1, parentDataProperty: 0, rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
                        errors = vErrors.length;
                      }
                      var valid1 = _errs6 === errors;
                    }
                    if (valid1) {
                      if (len0 > 1) {
                        const _errs7 = errors;
                        if (!validate58(data1[1], { instancePath: instancePath + "/temperature/1", parentData: data1, parentDataProperty: 1, rootData, dynamicAnchors })) {
                          vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
                          errors = vErrors.length;
                        }
                        var valid1 = _errs7 === errors;
                      }
                      if (valid1) {
                        const len1 = data1.length;
                        if (!(len1 <= 2)) {
                          validate57.errors = [{ instancePath: instancePath + "/temperature", schemaPath: "#/properties/temperature/items", keyword: "items", params: { limit: 2 }, message: "must NOT have more than 2 items" }];
                          return false;
                        }
                      }
                    }
                  }
                }
              } else {
                validate57.errors = [{ instancePath: instancePath + "/temperature", schemaPath: "#/properties/temperature/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                return false;
              }
            }
            var valid0 = _errs3 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.vibration !== void 0) {
              let data4 = data.vibration;
              const _errs8 = errors;
              if (!(data4 === "none" || data4 === "light" || data4 === "strong")) {
                validate57.errors = [{ instancePath: instancePath + "/vibration", schemaPath: "#/properties/vibration/enum", keyword: "enum", params: { allowedValues: schema22.properties.vibration.enum }, message: "must be equal to one of the allowed values" }];
                return false;
              }
              var valid0 = _errs8 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.reach !== void 0) {
                let data5 = data.reach;
                const _errs9 = errors;
                if (!(data5 === "public" || data5 === "trained")) {
                  validate57.errors = [{ instancePath: instancePath + "/reach", schemaPath: "#/properties/reach/enum", keyword: "enum", params: { allowedValues: schema22.properties.reach.enum }, message: "must be equal to one of the allowed values" }];
                  return false;
                }
                var valid0 = _errs9 === errors;
              } else {
                var valid0 = true;
              }
            }
          }
        }
      }
    } else {
      validate57.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate57.errors = vErrors;
  return errors === 0;
}
validate57.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var schema24 = { "type": "object", "additionalProperties": false, "description": "The floor it stands on.", "properties": { "z": { "$ref": "#/$defs/length", "description": "Height of the floor in the drawing; standard 0." }, "slope": { "type": ["string", "number"], "maxLength": 64, "description": "Slope as a ratio, or degrees; standard level.", "examples": ["1:100"] }, "uneven": { "$ref": "#/$defs/length", "description": "How far one foot may stand high or low, or a wheel runs over an edge; standard even." }, "friction": { "type": "number", "minimum": 0, "maximum": 2, "description": "Coefficient of friction between feet and floor; standard 0.3." } } };
var schema25 = { "type": ["number", "string"], "maxLength": 64, "description": "A length: a number in mm (or in), or a string with its unit.", "x-quantity": "length", "examples": [860, "30 in"] };
function validate63(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate63.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (!(typeof data == "number" && isFinite(data)) && typeof data !== "string") {
    validate63.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: schema25.type }, message: "must be number,string" }];
    return false;
  }
  if (errors === 0) {
    if (typeof data === "string") {
      if (func2(data) > 64) {
        validate63.errors = [{ instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" }];
        return false;
      }
    }
  }
  validate63.errors = vErrors;
  return errors === 0;
}
validate63.evaluated = { "dynamicProps": false, "dynamicItems": false };
function validate62(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate62.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      const _errs1 = errors;
      for (const key0 in data) {
        if (!(key0 === "z" || key0 === "slope" || key0 === "uneven" || key0 === "friction")) {
          validate62.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
          return false;
          break;
        }
      }
      if (_errs1 === errors) {
        if (data.z !== void 0) {
          const _errs2 = errors;
          if (!validate63(data.z, { instancePath: instancePath + "/z", parentData: data, parentDataProperty: "z", rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate63.errors : vErrors.concat(validate63.errors);
            errors = vErrors.length;
          }
          var valid0 = _errs2 === errors;
        } else {
          var valid0 = true;
        }
        if (valid0) {
          if (data.slope !== void 0) {
            let data1 = data.slope;
            const _errs3 = errors;
            if (typeof data1 !== "string" && !(typeof data1 == "number" && isFinite(data1))) {
              validate62.errors = [{ instancePath: instancePath + "/slope", schemaPath: "#/properties/slope/type", keyword: "type", params: { type: schema24.properties.slope.type }, message: "must be string,number" }];
              return false;
            }
            if (errors === _errs3) {
              if (typeof data1 === "string") {
                if (func2(data1) > 64) {
                  validate62.errors = [{ instancePath: instancePath + "/slope", schemaPath: "#/properties/slope/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" }];
                  return false;
                }
              }
            }
            var valid0 = _errs3 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.uneven !== void 0) {
              const _errs5 = errors;
              if (!validate63(data.uneven, { instancePath: instancePath + "/uneven", parentData: data, parentDataProperty: "uneven", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate63.errors : vErrors.concat(validate63.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs5 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.friction !== void 0) {
                let data3 = data.friction;
                const _errs6 = errors;
                if (errors === _errs6) {
                  if (typeof data3 == "number" && isFinite(data3)) {
                    if (data3 > 2 || isNaN(data3)) {
                      validate62.errors = [{ instancePath: instancePath + "/friction", schemaPath: "#/properties/friction/maximum", keyword: "maximum", params: { comparison: "<=", limit: 2 }, message: "must be <= 2" }];
                      return false;
                    } else {
                      if (data3 < 0 || isNaN(data3)) {
                        validate62.errors = [{ instancePath: instancePath + "/friction", schemaPath: "#/properties/friction/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" }];
                        return false;
                      }
                    }
                  } else {
                    validate62.errors = [{ instancePath: instancePath + "/friction", schemaPath: "#/properties/friction/type", keyword: "type", params: { type: "number" }, message: "must be number" }];
                    return false;
                  }
                }
                var valid0 = _errs6 === errors;
              } else {
                var valid0 = true;
              }
            }
          }
        }
      }
    } else {
      validate62.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate62.errors = vErrors;
  return errors === 0;
}
validate62.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var schema27 = { "description": 'A limit set for this frame or part: a value, a share of the span ("span / 300"), or a value with its basis.', "anyOf": [{ "type": ["number", "string"], "maxLength": 64 }, { "type": "object", "required": ["value", "basis"], "additionalProperties": false, "properties": { "value": { "type": ["number", "string"], "maxLength": 64 }, "basis": { "type": "string", "minLength": 1, "maxLength": 400, "description": "Where the limit comes from." } } }], "examples": ["span / 500", { "value": "2 mm", "basis": "customer drawing" }] };
function validate68(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate68.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  const _errs0 = errors;
  let valid0 = false;
  const _errs1 = errors;
  if (!(typeof data == "number" && isFinite(data)) && typeof data !== "string") {
    const err0 = { instancePath, schemaPath: "#/anyOf/0/type", keyword: "type", params: { type: schema27.anyOf[0].type }, message: "must be number,string" };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  if (errors === _errs1) {
    if (typeof data === "string") {
      if (func2(data) > 64) {
        const err1 = { instancePath, schemaPath: "#/anyOf/0/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
    }
  }
  var _valid0 = _errs1 === errors;
  valid0 = valid0 || _valid0;
  const _errs3 = errors;
  if (errors === _errs3) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.value === void 0 && (missing0 = "value") || data.basis === void 0 && (missing0 = "basis")) {
        const err2 = { instancePath, schemaPath: "#/anyOf/1/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      } else {
        const _errs5 = errors;
        for (const key0 in data) {
          if (!(key0 === "value" || key0 === "basis")) {
            const err3 = { instancePath, schemaPath: "#/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
            if (vErrors === null) {
              vErrors = [err3];
            } else {
              vErrors.push(err3);
            }
            errors++;
            break;
          }
        }
        if (_errs5 === errors) {
          if (data.value !== void 0) {
            let data0 = data.value;
            const _errs6 = errors;
            if (!(typeof data0 == "number" && isFinite(data0)) && typeof data0 !== "string") {
              const err4 = { instancePath: instancePath + "/value", schemaPath: "#/anyOf/1/properties/value/type", keyword: "type", params: { type: schema27.anyOf[1].properties.value.type }, message: "must be number,string" };
              if (vErrors === null) {
                vErrors = [err4];
              } else {
                vErrors.push(err4);
              }
              errors++;
            }
            if (errors === _errs6) {
              if (typeof data0 === "string") {
                if (func2(data0) > 64) {
                  const err5 = { instancePath: instancePath + "/value", schemaPath: "#/anyOf/1/properties/value/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" };
                  if (vErrors === null) {
                    vErrors = [err5];
                  } else {
                    vErrors.push(err5);
                  }
                  errors++;
                }
              }
            }
            var valid1 = _errs6 === errors;
          } else {
            var valid1 = true;
          }
          if (valid1) {
            if (data.basis !== void 0) {
              let data1 = data.basis;
              const _errs8 = errors;
              if (errors === _errs8) {
                if (typeof data1 === "string") {
                  if (func2(data1) > 400) {
                    const err6 = { instancePath: instancePath + "/basis", schemaPath: "#/anyOf/1/properties/basis/maxLength", keyword: "maxLength", params: { limit: 400 }, message: "must NOT have more than 400 characters" };
                    if (vErrors === null) {
                      vErrors = [err6];
                    } else {
                      vErrors.push(err6);
                    }
                    errors++;
                  } else {
                    if (func2(data1) < 1) {
                      const err7 = { instancePath: instancePath + "/basis", schemaPath: "#/anyOf/1/properties/basis/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                      if (vErrors === null) {
                        vErrors = [err7];
                      } else {
                        vErrors.push(err7);
                      }
                      errors++;
                    }
                  }
                } else {
                  const err8 = { instancePath: instancePath + "/basis", schemaPath: "#/anyOf/1/properties/basis/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err8];
                  } else {
                    vErrors.push(err8);
                  }
                  errors++;
                }
              }
              var valid1 = _errs8 === errors;
            } else {
              var valid1 = true;
            }
          }
        }
      }
    } else {
      const err9 = { instancePath, schemaPath: "#/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
      if (vErrors === null) {
        vErrors = [err9];
      } else {
        vErrors.push(err9);
      }
      errors++;
    }
  }
  var _valid0 = _errs3 === errors;
  valid0 = valid0 || _valid0;
  if (_valid0) {
    var props0 = true;
  }
  if (!valid0) {
    const err10 = { instancePath, schemaPath: "#/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
    if (vErrors === null) {
      vErrors = [err10];
    } else {
      vErrors.push(err10);
    }
    errors++;
    validate68.errors = vErrors;
    return false;
  } else {
    errors = _errs0;
    if (vErrors !== null) {
      if (_errs0) {
        vErrors.length = _errs0;
      } else {
        vErrors = null;
      }
    }
  }
  validate68.errors = vErrors;
  evaluated0.props = props0;
  return errors === 0;
}
validate68.evaluated = { "dynamicProps": true, "dynamicItems": false };
function validate67(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate67.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      for (const key0 in data) {
        const _errs2 = errors;
        if (!validate68(data[key0], { instancePath: instancePath + "/" + key0.replace(/~/g, "~0").replace(/\//g, "~1"), parentData: data, parentDataProperty: key0, rootData, dynamicAnchors })) {
          vErrors = vErrors === null ? validate68.errors : vErrors.concat(validate68.errors);
          errors = vErrors.length;
        }
        var valid0 = _errs2 === errors;
        if (!valid0) {
          break;
        }
      }
    } else {
      validate67.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate67.errors = vErrors;
  return errors === 0;
}
validate67.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var pattern3 = new RegExp("^[^\\s/.][^\\s/.]*$", "u");
function validate71(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate71.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (typeof data === "string") {
      if (func2(data) > 256) {
        validate71.errors = [{ instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 256 }, message: "must NOT have more than 256 characters" }];
        return false;
      } else {
        if (!pattern3.test(data)) {
          validate71.errors = [{ instancePath, schemaPath: "#/pattern", keyword: "pattern", params: { pattern: "^[^\\s/.][^\\s/.]*$" }, message: 'must match pattern "^[^\\s/.][^\\s/.]*$"' }];
          return false;
        }
      }
    } else {
      validate71.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
      return false;
    }
  }
  validate71.errors = vErrors;
  return errors === 0;
}
validate71.evaluated = { "dynamicProps": false, "dynamicItems": false };
var schema30 = { "type": "object", "required": ["connector"], "additionalProperties": false, "description": "One connector on a bar's end.", "properties": { "connector": { "type": "string", "minLength": 1, "description": "Name of a connector in stock.", "examples": ["inside-bracket-40"] }, "on": { "$ref": "#/$defs/face", "description": "The face of the ending bar it sits on; brackets and end fasteners need it." }, "slot": { "$ref": "#/$defs/choice", "description": "Which slot of that face, where it has several." }, "bore": { "$ref": "#/$defs/choice", "description": "Which core bore of the end, for end screws, where it has several." }, "screw": { "type": "string", "description": "A screw of stock instead of the connector's own." }, "nut": { "enum": ["end-load", "drop-in"], "description": "Kind of T-nut under its screws; standard defaults.nut." }, "torque": { "anyOf": [{ "const": "rated" }, { "$ref": "#/$defs/moment" }], "description": "Tightening torque of its screws; standard defaults.torque." }, "lock": { "enum": ["none", "thread-lock", "washer"], "description": "What keeps its screws from loosening; standard defaults.lock." }, "omit": { "type": "array", "items": { "type": "string" }, "description": "Holes left without a screw, by their ids in stock.", "examples": [["a2"]] }, "shift": { "$ref": "#/$defs/length", "description": "Moves the connector sideways from the slot line, towards the face counted next (A to B to C to D)." } } };
var schema31 = { "anyOf": [{ "enum": ["+x", "-x", "+y", "-y", "+z", "-z", "above", "below", "inner", "outer", "A", "B", "C", "D"] }], "description": "A face of a bar: the global direction it looks (when exactly one face looks that way within 5\xB0); above, below, inner (towards the frame's middle), outer; or A to D, counted right-handed about the bar from the face that looks up at roll 0.", "examples": ["below", "+y"] };
function validate75(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate75.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  const _errs0 = errors;
  let valid0 = false;
  const _errs1 = errors;
  if (!(data === "+x" || data === "-x" || data === "+y" || data === "-y" || data === "+z" || data === "-z" || data === "above" || data === "below" || data === "inner" || data === "outer" || data === "A" || data === "B" || data === "C" || data === "D")) {
    const err0 = { instancePath, schemaPath: "#/anyOf/0/enum", keyword: "enum", params: { allowedValues: schema31.anyOf[0].enum }, message: "must be equal to one of the allowed values" };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  var _valid0 = _errs1 === errors;
  valid0 = valid0 || _valid0;
  if (!valid0) {
    const err1 = { instancePath, schemaPath: "#/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
    if (vErrors === null) {
      vErrors = [err1];
    } else {
      vErrors.push(err1);
    }
    errors++;
    validate75.errors = vErrors;
    return false;
  } else {
    errors = _errs0;
    if (vErrors !== null) {
      if (_errs0) {
        vErrors.length = _errs0;
      } else {
        vErrors = null;
      }
    }
  }
  validate75.errors = vErrors;
  return errors === 0;
}
validate75.evaluated = { "dynamicProps": false, "dynamicItems": false };
var schema32 = { "anyOf": [{ "enum": ["+x", "-x", "+y", "-y", "+z", "-z", "all"] }, { "type": "integer", "minimum": 1 }], "description": "Which of several slots or bores: the one furthest that way, its number counted along the face, or all.", "examples": ["+z", 2], "x-expected": "one of +x, -x, +y, -y, +z, -z, all, or a number from 1" };
function validate77(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate77.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  const _errs0 = errors;
  let valid0 = false;
  const _errs1 = errors;
  if (!(data === "+x" || data === "-x" || data === "+y" || data === "-y" || data === "+z" || data === "-z" || data === "all")) {
    const err0 = { instancePath, schemaPath: "#/anyOf/0/enum", keyword: "enum", params: { allowedValues: schema32.anyOf[0].enum }, message: "must be equal to one of the allowed values" };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  var _valid0 = _errs1 === errors;
  valid0 = valid0 || _valid0;
  const _errs2 = errors;
  if (!(typeof data == "number" && (!(data % 1) && !isNaN(data)) && isFinite(data))) {
    const err1 = { instancePath, schemaPath: "#/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
    if (vErrors === null) {
      vErrors = [err1];
    } else {
      vErrors.push(err1);
    }
    errors++;
  }
  if (errors === _errs2) {
    if (typeof data == "number" && isFinite(data)) {
      if (data < 1 || isNaN(data)) {
        const err2 = { instancePath, schemaPath: "#/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
  }
  var _valid0 = _errs2 === errors;
  valid0 = valid0 || _valid0;
  if (!valid0) {
    const err3 = { instancePath, schemaPath: "#/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
    if (vErrors === null) {
      vErrors = [err3];
    } else {
      vErrors.push(err3);
    }
    errors++;
    validate77.errors = vErrors;
    return false;
  } else {
    errors = _errs0;
    if (vErrors !== null) {
      if (_errs0) {
        vErrors.length = _errs0;
      } else {
        vErrors = null;
      }
    }
  }
  validate77.errors = vErrors;
  return errors === 0;
}
validate77.evaluated = { "dynamicProps": false, "dynamicItems": false };
function validate74(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate74.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.connector === void 0 && (missing0 = "connector")) {
        validate74.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!func1.call(schema30.properties, key0)) {
            validate74.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.connector !== void 0) {
            let data0 = data.connector;
            const _errs2 = errors;
            if (errors === _errs2) {
              if (typeof data0 === "string") {
                if (func2(data0) < 1) {
                  validate74.errors = [{ instancePath: instancePath + "/connector", schemaPath: "#/properties/connector/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
                  return false;
                }
              } else {
                validate74.errors = [{ instancePath: instancePath + "/connector", schemaPath: "#/properties/connector/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                return false;
              }
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.on !== void 0) {
              const _errs4 = errors;
              if (!validate75(data.on, { instancePath: instancePath + "/on", parentData: data, parentDataProperty: "on", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate75.errors : vErrors.concat(validate75.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs4 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.slot !== void 0) {
                const _errs5 = errors;
                if (!validate77(data.slot, { instancePath: instancePath + "/slot", parentData: data, parentDataProperty: "slot", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate77.errors : vErrors.concat(validate77.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs5 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.bore !== void 0) {
                  const _errs6 = errors;
                  if (!validate77(data.bore, { instancePath: instancePath + "/bore", parentData: data, parentDataProperty: "bore", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate77.errors : vErrors.concat(validate77.errors);
                    errors = vErrors.length;
                  }
                  var valid0 = _errs6 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.screw !== void 0) {
                    const _errs7 = errors;
                    if (typeof data.screw !== "string") {
                      validate74.errors = [{ instancePath: instancePath + "/screw", schemaPath: "#/properties/screw/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                      return false;
                    }
                    var valid0 = _errs7 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.nut !== void 0) {
                      let data5 = data.nut;
                      const _errs9 = errors;
                      if (!(data5 === "end-load" || data5 === "drop-in")) {
                        validate74.errors = [{ instancePath: instancePath + "/nut", schemaPath: "#/properties/nut/enum", keyword: "enum", params: { allowedValues: schema30.properties.nut.enum }, message: "must be equal to one of the allowed values" }];
                        return false;
                      }
                      var valid0 = _errs9 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.torque !== void 0) {
                        let data6 = data.torque;
                        const _errs10 = errors;
                        const _errs11 = errors;
                        let valid1 = false;
                        const _errs12 = errors;
                        if ("rated" !== data6) {
                          const err0 = { instancePath: instancePath + "/torque", schemaPath: "#/properties/torque/anyOf/0/const", keyword: "const", params: { allowedValue: "rated" }, message: "must be equal to constant" };
                          if (vErrors === null) {
                            vErrors = [err0];
                          } else {
                            vErrors.push(err0);
                          }
                          errors++;
                        }
                        var _valid0 = _errs12 === errors;
                        valid1 = valid1 || _valid0;
                        const _errs13 = errors;
                        if (!validate54(data6, { instancePath: instancePath + "/torque", parentData: data, parentDataProperty: "torque", rootData, dynamicAnchors })) {
                          vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
                          errors = vErrors.length;
                        }
                        var _valid0 = _errs13 === errors;
                        valid1 = valid1 || _valid0;
                        if (!valid1) {
                          const err1 = { instancePath: instancePath + "/torque", schemaPath: "#/properties/torque/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                          if (vErrors === null) {
                            vErrors = [err1];
                          } else {
                            vErrors.push(err1);
                          }
                          errors++;
                          validate74.errors = vErrors;
                          return false;
                        } else {
                          errors = _errs11;
                          if (vErrors !== null) {
                            if (_errs11) {
                              vErrors.length = _errs11;
                            } else {
                              vErrors = null;
                            }
                          }
                        }
                        var valid0 = _errs10 === errors;
                      } else {
                        var valid0 = true;
                      }
                      if (valid0) {
                        if (data.lock !== void 0) {
                          let data7 = data.lock;
                          const _errs14 = errors;
                          if (!(data7 === "none" || data7 === "thread-lock" || data7 === "washer")) {
                            validate74.errors = [{ instancePath: instancePath + "/lock", schemaPath: "#/properties/lock/enum", keyword: "enum", params: { allowedValues: schema30.properties.lock.enum }, message: "must be equal to one of the allowed values" }];
                            return false;
                          }
                          var valid0 = _errs14 === errors;
                        } else {
                          var valid0 = true;
                        }
                        if (valid0) {
                          if (data.omit !== void 0) {
                            let data8 = data.omit;
                            const _errs15 = errors;
                            if (errors === _errs15) {
                              if (Array.isArray(data8)) {
                                var valid2 = true;
                                const len0 = data8.length;
                                for (let i0 = 0; i0 < len0; i0++) {
                                  const _errs17 = errors;
                                  if (typeof data8[i0] !== "string") {
                                    validate74.errors = [{ instancePath: instancePath + "/omit/" + i0, schemaPath: "#/properties/omit/items/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                    return false;
                                  }
                                  var valid2 = _errs17 === errors;
                                  if (!valid2) {
                                    break;
                                  }
                                }
                              } else {
                                validate74.errors = [{ instancePath: instancePath + "/omit", schemaPath: "#/properties/omit/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                return false;
                              }
                            }
                            var valid0 = _errs15 === errors;
                          } else {
                            var valid0 = true;
                          }
                          if (valid0) {
                            if (data.shift !== void 0) {
                              const _errs19 = errors;
                              if (!validate63(data.shift, { instancePath: instancePath + "/shift", parentData: data, parentDataProperty: "shift", rootData, dynamicAnchors })) {
                                vErrors = vErrors === null ? validate63.errors : vErrors.concat(validate63.errors);
                                errors = vErrors.length;
                              }
                              var valid0 = _errs19 === errors;
                            } else {
                              var valid0 = true;
                            }
                          }
                        }
                      }
                    }
                  }
                }
              }
            }
          }
        }
      }
    } else {
      validate74.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate74.errors = vErrors;
  return errors === 0;
}
validate74.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
function validate73(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate73.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (Array.isArray(data)) {
      if (data.length < 1) {
        validate73.errors = [{ instancePath, schemaPath: "#/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" }];
        return false;
      } else {
        var valid0 = true;
        const len0 = data.length;
        for (let i0 = 0; i0 < len0; i0++) {
          const _errs1 = errors;
          if (!validate74(data[i0], { instancePath: instancePath + "/" + i0, parentData: data, parentDataProperty: i0, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
            errors = vErrors.length;
          }
          var valid0 = _errs1 === errors;
          if (!valid0) {
            break;
          }
        }
      }
    } else {
      validate73.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
      return false;
    }
  }
  validate73.errors = vErrors;
  return errors === 0;
}
validate73.evaluated = { "items": true, "dynamicProps": false, "dynamicItems": false };
var schema33 = { "type": "object", "required": ["id", "profile", "from", "to"], "additionalProperties": false, "description": "One bar, drawn by two points on its centreline.", "properties": { "id": { "$ref": "#/$defs/id" }, "profile": { "type": "string", "minLength": 1, "description": "Name of a profile in stock.", "examples": ["40x40-8"] }, "from": { "$ref": "#/$defs/point" }, "to": { "$ref": "#/$defs/point" }, "tall": { "$ref": "#/$defs/direction", "description": "Where the long side of the section points (face A). Not together with roll." }, "roll": { "$ref": "#/$defs/angle", "description": "Turn about from \u2192 to, right-handed, out of the usual position: face A as near to up as can be; on a vertical bar face A looks +x." }, "ends": { "type": "object", "additionalProperties": false, "description": "How the ends are cut and closed.", "properties": { "from": { "$ref": "#/$defs/endSpec", "description": "The end at the from point." }, "to": { "$ref": "#/$defs/endSpec", "description": "The end at the to point." }, "both": { "$ref": "#/$defs/endSpec", "description": "Both ends alike." } } }, "holes": { "type": "array", "items": { "$ref": "#/$defs/hole" }, "description": "Holes drilled across the bar." }, "criteria": { "$ref": "#/$defs/criteria" } }, "examples": [{ "id": "rail-1", "profile": "40x40-8", "from": [20, 20, 840], "to": [1480, 20, 840] }] };
function validate86(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate86.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (Array.isArray(data)) {
      if (data.length > 3) {
        validate86.errors = [{ instancePath, schemaPath: "#/maxItems", keyword: "maxItems", params: { limit: 3 }, message: "must NOT have more than 3 items" }];
        return false;
      } else {
        if (data.length < 3) {
          validate86.errors = [{ instancePath, schemaPath: "#/minItems", keyword: "minItems", params: { limit: 3 }, message: "must NOT have fewer than 3 items" }];
          return false;
        } else {
          const len0 = data.length;
          if (len0 > 0) {
            const _errs2 = errors;
            if (!validate63(data[0], { instancePath: instancePath + "/0", parentData: data, parentDataProperty: 0, rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate63.errors : vErrors.concat(validate63.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs2 === errors;
          }
          if (valid0) {
            if (len0 > 1) {
              const _errs3 = errors;
              if (!validate63(data[1], { instancePath: instancePath + "/1", parentData: data, parentDataProperty: 1, rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate63.errors : vErrors.concat(validate63.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs3 === errors;
            }
            if (valid0) {
              if (len0 > 2) {
                const _errs4 = errors;
                if (!validate63(data[2], { instancePath: instancePath + "/2", parentData: data, parentDataProperty: 2, rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate63.errors : vErrors.concat(validate63.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs4 === errors;
              }
              if (valid0) {
                const len1 = data.length;
                if (!(len1 <= 3)) {
                  validate86.errors = [{ instancePath, schemaPath: "#/items", keyword: "items", params: { limit: 3 }, message: "must NOT have more than 3 items" }];
                  return false;
                }
              }
            }
          }
        }
      }
    } else {
      validate86.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
      return false;
    }
  }
  validate86.errors = vErrors;
  return errors === 0;
}
validate86.evaluated = { "items": true, "dynamicProps": false, "dynamicItems": false };
var schema35 = { "anyOf": [{ "enum": ["+x", "-x", "+y", "-y", "+z", "-z"] }, { "$ref": "#/$defs/vector" }], "description": "A direction of the drawing: one of +x -x +y -y +z -z, or a vector.", "examples": ["+x", [1, 0, 1]], "x-expected": "one of +x, -x, +y, -y, +z, -z, or a vector [x, y, z]" };
function validate93(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate93.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (Array.isArray(data)) {
      if (data.length > 3) {
        validate93.errors = [{ instancePath, schemaPath: "#/maxItems", keyword: "maxItems", params: { limit: 3 }, message: "must NOT have more than 3 items" }];
        return false;
      } else {
        if (data.length < 3) {
          validate93.errors = [{ instancePath, schemaPath: "#/minItems", keyword: "minItems", params: { limit: 3 }, message: "must NOT have fewer than 3 items" }];
          return false;
        } else {
          const len0 = data.length;
          if (len0 > 0) {
            let data0 = data[0];
            const _errs2 = errors;
            if (!(typeof data0 == "number" && isFinite(data0))) {
              validate93.errors = [{ instancePath: instancePath + "/0", schemaPath: "#/prefixItems/0/type", keyword: "type", params: { type: "number" }, message: "must be number" }];
              return false;
            }
            var valid0 = _errs2 === errors;
          }
          if (valid0) {
            if (len0 > 1) {
              let data1 = data[1];
              const _errs4 = errors;
              if (!(typeof data1 == "number" && isFinite(data1))) {
                validate93.errors = [{ instancePath: instancePath + "/1", schemaPath: "#/prefixItems/1/type", keyword: "type", params: { type: "number" }, message: "must be number" }];
                return false;
              }
              var valid0 = _errs4 === errors;
            }
            if (valid0) {
              if (len0 > 2) {
                let data2 = data[2];
                const _errs6 = errors;
                if (!(typeof data2 == "number" && isFinite(data2))) {
                  validate93.errors = [{ instancePath: instancePath + "/2", schemaPath: "#/prefixItems/2/type", keyword: "type", params: { type: "number" }, message: "must be number" }];
                  return false;
                }
                var valid0 = _errs6 === errors;
              }
              if (valid0) {
                const len1 = data.length;
                if (!(len1 <= 3)) {
                  validate93.errors = [{ instancePath, schemaPath: "#/items", keyword: "items", params: { limit: 3 }, message: "must NOT have more than 3 items" }];
                  return false;
                }
              }
            }
          }
        }
      }
    } else {
      validate93.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
      return false;
    }
  }
  validate93.errors = vErrors;
  return errors === 0;
}
validate93.evaluated = { "items": true, "dynamicProps": false, "dynamicItems": false };
function validate92(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate92.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  const _errs0 = errors;
  let valid0 = false;
  const _errs1 = errors;
  if (!(data === "+x" || data === "-x" || data === "+y" || data === "-y" || data === "+z" || data === "-z")) {
    const err0 = { instancePath, schemaPath: "#/anyOf/0/enum", keyword: "enum", params: { allowedValues: schema35.anyOf[0].enum }, message: "must be equal to one of the allowed values" };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  var _valid0 = _errs1 === errors;
  valid0 = valid0 || _valid0;
  const _errs2 = errors;
  if (!validate93(data, { instancePath, parentData, parentDataProperty, rootData, dynamicAnchors })) {
    vErrors = vErrors === null ? validate93.errors : vErrors.concat(validate93.errors);
    errors = vErrors.length;
  }
  var _valid0 = _errs2 === errors;
  valid0 = valid0 || _valid0;
  if (_valid0) {
    var items0 = true;
  }
  if (!valid0) {
    const err1 = { instancePath, schemaPath: "#/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
    if (vErrors === null) {
      vErrors = [err1];
    } else {
      vErrors.push(err1);
    }
    errors++;
    validate92.errors = vErrors;
    return false;
  } else {
    errors = _errs0;
    if (vErrors !== null) {
      if (_errs0) {
        vErrors.length = _errs0;
      } else {
        vErrors = null;
      }
    }
  }
  validate92.errors = vErrors;
  evaluated0.items = items0;
  return errors === 0;
}
validate92.evaluated = { "dynamicProps": false, "dynamicItems": true };
var schema37 = { "type": ["number", "string"], "maxLength": 64, "description": "An angle: a number in degrees, or a string with its unit.", "x-quantity": "angle", "examples": [30] };
function validate96(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate96.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (!(typeof data == "number" && isFinite(data)) && typeof data !== "string") {
    validate96.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: schema37.type }, message: "must be number,string" }];
    return false;
  }
  if (errors === 0) {
    if (typeof data === "string") {
      if (func2(data) > 64) {
        validate96.errors = [{ instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" }];
        return false;
      }
    }
  }
  validate96.errors = vErrors;
  return errors === 0;
}
validate96.evaluated = { "dynamicProps": false, "dynamicItems": false };
var schema38 = { "type": "object", "additionalProperties": false, "description": "How one end is cut and closed. At most one of cut, butt, mitre, angle, plane.", "properties": { "cut": { "enum": ["butt", "as-drawn"], "description": "butt: cut at the face of the bar the end is drawn into. as-drawn: square at the drawn point." }, "butt": { "$ref": "#/$defs/id", "description": "Cut at the face of this bar." }, "mitre": { "$ref": "#/$defs/id", "description": "Mitred against this bar." }, "angle": { "$ref": "#/$defs/angle", "description": "Cut turned by this angle out of square, about the axis given." }, "about": { "$ref": "#/$defs/direction", "description": "The axis of angle." }, "plane": { "$ref": "#/$defs/vector", "description": "Outward normal of the cut, through the drawn point." }, "cap": { "type": "string", "minLength": 1, "description": "A cap of stock, or none." }, "edge": { "enum": ["deburred", "raw"], "description": "Edge of this cut; standard defaults.ends." } } };
function validate98(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate98.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      const _errs1 = errors;
      for (const key0 in data) {
        if (!(key0 === "cut" || key0 === "butt" || key0 === "mitre" || key0 === "angle" || key0 === "about" || key0 === "plane" || key0 === "cap" || key0 === "edge")) {
          validate98.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
          return false;
          break;
        }
      }
      if (_errs1 === errors) {
        if (data.cut !== void 0) {
          let data0 = data.cut;
          const _errs2 = errors;
          if (!(data0 === "butt" || data0 === "as-drawn")) {
            validate98.errors = [{ instancePath: instancePath + "/cut", schemaPath: "#/properties/cut/enum", keyword: "enum", params: { allowedValues: schema38.properties.cut.enum }, message: "must be equal to one of the allowed values" }];
            return false;
          }
          var valid0 = _errs2 === errors;
        } else {
          var valid0 = true;
        }
        if (valid0) {
          if (data.butt !== void 0) {
            const _errs3 = errors;
            if (!validate71(data.butt, { instancePath: instancePath + "/butt", parentData: data, parentDataProperty: "butt", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate71.errors : vErrors.concat(validate71.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs3 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.mitre !== void 0) {
              const _errs4 = errors;
              if (!validate71(data.mitre, { instancePath: instancePath + "/mitre", parentData: data, parentDataProperty: "mitre", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate71.errors : vErrors.concat(validate71.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs4 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.angle !== void 0) {
                const _errs5 = errors;
                if (!validate96(data.angle, { instancePath: instancePath + "/angle", parentData: data, parentDataProperty: "angle", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate96.errors : vErrors.concat(validate96.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs5 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.about !== void 0) {
                  const _errs6 = errors;
                  if (!validate92(data.about, { instancePath: instancePath + "/about", parentData: data, parentDataProperty: "about", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate92.errors : vErrors.concat(validate92.errors);
                    errors = vErrors.length;
                  }
                  var valid0 = _errs6 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.plane !== void 0) {
                    const _errs7 = errors;
                    if (!validate93(data.plane, { instancePath: instancePath + "/plane", parentData: data, parentDataProperty: "plane", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate93.errors : vErrors.concat(validate93.errors);
                      errors = vErrors.length;
                    }
                    var valid0 = _errs7 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.cap !== void 0) {
                      let data6 = data.cap;
                      const _errs8 = errors;
                      if (errors === _errs8) {
                        if (typeof data6 === "string") {
                          if (func2(data6) < 1) {
                            validate98.errors = [{ instancePath: instancePath + "/cap", schemaPath: "#/properties/cap/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
                            return false;
                          }
                        } else {
                          validate98.errors = [{ instancePath: instancePath + "/cap", schemaPath: "#/properties/cap/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                          return false;
                        }
                      }
                      var valid0 = _errs8 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.edge !== void 0) {
                        let data7 = data.edge;
                        const _errs10 = errors;
                        if (!(data7 === "deburred" || data7 === "raw")) {
                          validate98.errors = [{ instancePath: instancePath + "/edge", schemaPath: "#/properties/edge/enum", keyword: "enum", params: { allowedValues: schema38.properties.edge.enum }, message: "must be equal to one of the allowed values" }];
                          return false;
                        }
                        var valid0 = _errs10 === errors;
                      } else {
                        var valid0 = true;
                      }
                    }
                  }
                }
              }
            }
          }
        }
      }
    } else {
      validate98.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate98.errors = vErrors;
  return errors === 0;
}
validate98.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
function validate107(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate107.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.at === void 0 && (missing0 = "at") || data.on === void 0 && (missing0 = "on") || data.diameter === void 0 && (missing0 = "diameter")) {
        validate107.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "at" || key0 === "on" || key0 === "diameter" || key0 === "through")) {
            validate107.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.at !== void 0) {
            const _errs2 = errors;
            if (!validate63(data.at, { instancePath: instancePath + "/at", parentData: data, parentDataProperty: "at", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate63.errors : vErrors.concat(validate63.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.on !== void 0) {
              const _errs3 = errors;
              if (!validate75(data.on, { instancePath: instancePath + "/on", parentData: data, parentDataProperty: "on", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate75.errors : vErrors.concat(validate75.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.diameter !== void 0) {
                const _errs4 = errors;
                if (!validate63(data.diameter, { instancePath: instancePath + "/diameter", parentData: data, parentDataProperty: "diameter", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate63.errors : vErrors.concat(validate63.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs4 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.through !== void 0) {
                  const _errs5 = errors;
                  if (typeof data.through !== "boolean") {
                    validate107.errors = [{ instancePath: instancePath + "/through", schemaPath: "#/properties/through/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" }];
                    return false;
                  }
                  var valid0 = _errs5 === errors;
                } else {
                  var valid0 = true;
                }
              }
            }
          }
        }
      }
    } else {
      validate107.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate107.errors = vErrors;
  return errors === 0;
}
validate107.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
function validate84(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate84.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.id === void 0 && (missing0 = "id") || data.profile === void 0 && (missing0 = "profile") || data.from === void 0 && (missing0 = "from") || data.to === void 0 && (missing0 = "to")) {
        validate84.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!func1.call(schema33.properties, key0)) {
            validate84.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.id !== void 0) {
            const _errs2 = errors;
            if (!validate71(data.id, { instancePath: instancePath + "/id", parentData: data, parentDataProperty: "id", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate71.errors : vErrors.concat(validate71.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.profile !== void 0) {
              let data1 = data.profile;
              const _errs3 = errors;
              if (errors === _errs3) {
                if (typeof data1 === "string") {
                  if (func2(data1) < 1) {
                    validate84.errors = [{ instancePath: instancePath + "/profile", schemaPath: "#/properties/profile/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
                    return false;
                  }
                } else {
                  validate84.errors = [{ instancePath: instancePath + "/profile", schemaPath: "#/properties/profile/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                  return false;
                }
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.from !== void 0) {
                const _errs5 = errors;
                if (!validate86(data.from, { instancePath: instancePath + "/from", parentData: data, parentDataProperty: "from", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate86.errors : vErrors.concat(validate86.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs5 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.to !== void 0) {
                  const _errs6 = errors;
                  if (!validate86(data.to, { instancePath: instancePath + "/to", parentData: data, parentDataProperty: "to", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate86.errors : vErrors.concat(validate86.errors);
                    errors = vErrors.length;
                  }
                  var valid0 = _errs6 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.tall !== void 0) {
                    const _errs7 = errors;
                    if (!validate92(data.tall, { instancePath: instancePath + "/tall", parentData: data, parentDataProperty: "tall", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate92.errors : vErrors.concat(validate92.errors);
                      errors = vErrors.length;
                    }
                    var valid0 = _errs7 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.roll !== void 0) {
                      const _errs8 = errors;
                      if (!validate96(data.roll, { instancePath: instancePath + "/roll", parentData: data, parentDataProperty: "roll", rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate96.errors : vErrors.concat(validate96.errors);
                        errors = vErrors.length;
                      }
                      var valid0 = _errs8 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.ends !== void 0) {
                        let data6 = data.ends;
                        const _errs9 = errors;
                        if (errors === _errs9) {
                          if (data6 && typeof data6 == "object" && !Array.isArray(data6)) {
                            const _errs11 = errors;
                            for (const key1 in data6) {
                              if (!(key1 === "from" || key1 === "to" || key1 === "both")) {
                                validate84.errors = [{ instancePath: instancePath + "/ends", schemaPath: "#/properties/ends/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties" }];
                                return false;
                                break;
                              }
                            }
                            if (_errs11 === errors) {
                              if (data6.from !== void 0) {
                                const _errs12 = errors;
                                if (!validate98(data6.from, { instancePath: instancePath + "/ends/from", parentData: data6, parentDataProperty: "from", rootData, dynamicAnchors })) {
                                  vErrors = vErrors === null ? validate98.errors : vErrors.concat(validate98.errors);
                                  errors = vErrors.length;
                                }
                                var valid1 = _errs12 === errors;
                              } else {
                                var valid1 = true;
                              }
                              if (valid1) {
                                if (data6.to !== void 0) {
                                  const _errs13 = errors;
                                  if (!validate98(data6.to, { instancePath: instancePath + "/ends/to", parentData: data6, parentDataProperty: "to", rootData, dynamicAnchors })) {
                                    vErrors = vErrors === null ? validate98.errors : vErrors.concat(validate98.errors);
                                    errors = vErrors.length;
                                  }
                                  var valid1 = _errs13 === errors;
                                } else {
                                  var valid1 = true;
                                }
                                if (valid1) {
                                  if (data6.both !== void 0) {
                                    const _errs14 = errors;
                                    if (!validate98(data6.both, { instancePath: instancePath + "/ends/both", parentData: data6, parentDataProperty: "both", rootData, dynamicAnchors })) {
                                      vErrors = vErrors === null ? validate98.errors : vErrors.concat(validate98.errors);
                                      errors = vErrors.length;
                                    }
                                    var valid1 = _errs14 === errors;
                                  } else {
                                    var valid1 = true;
                                  }
                                }
                              }
                            }
                          } else {
                            validate84.errors = [{ instancePath: instancePath + "/ends", schemaPath: "#/properties/ends/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                            return false;
                          }
                        }
                        var valid0 = _errs9 === errors;
                      } else {
                        var valid0 = true;
                      }
                      if (valid0) {
                        if (data.holes !== void 0) {
                          let data10 = data.holes;
                          const _errs15 = errors;
                          if (errors === _errs15) {
                            if (Array.isArray(data10)) {
                              var valid2 = true;
                              const len0 = data10.length;
                              for (let i0 = 0; i0 < len0; i0++) {
                                const _errs17 = errors;
                                if (!validate107(data10[i0], { instancePath: instancePath + "/holes/" + i0, parentData: data10, parentDataProperty: i0, rootData, dynamicAnchors })) {
                                  vErrors = vErrors === null ? validate107.errors : vErrors.concat(validate107.errors);
                                  errors = vErrors.length;
                                }
                                var valid2 = _errs17 === errors;
                                if (!valid2) {
                                  break;
                                }
                              }
                            } else {
                              validate84.errors = [{ instancePath: instancePath + "/holes", schemaPath: "#/properties/holes/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                              return false;
                            }
                          }
                          var valid0 = _errs15 === errors;
                        } else {
                          var valid0 = true;
                        }
                        if (valid0) {
                          if (data.criteria !== void 0) {
                            const _errs18 = errors;
                            if (!validate67(data.criteria, { instancePath: instancePath + "/criteria", parentData: data, parentDataProperty: "criteria", rootData, dynamicAnchors })) {
                              vErrors = vErrors === null ? validate67.errors : vErrors.concat(validate67.errors);
                              errors = vErrors.length;
                            }
                            var valid0 = _errs18 === errors;
                          } else {
                            var valid0 = true;
                          }
                        }
                      }
                    }
                  }
                }
              }
            }
          }
        }
      }
    } else {
      validate84.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate84.errors = vErrors;
  return errors === 0;
}
validate84.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
function validate116(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate116.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (typeof data === "string") {
      if (func2(data) > 256) {
        validate116.errors = [{ instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 256 }, message: "must NOT have more than 256 characters" }];
        return false;
      } else {
        if (func2(data) < 1) {
          validate116.errors = [{ instancePath, schemaPath: "#/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
          return false;
        }
      }
    } else {
      validate116.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
      return false;
    }
  }
  validate116.errors = vErrors;
  return errors === 0;
}
validate116.evaluated = { "dynamicProps": false, "dynamicItems": false };
var schema42 = { "enum": ["from", "to", "both"], "description": "Which end of each bar: from, to or both.", "examples": ["both"] };
function validate118(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate118.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (!(data === "from" || data === "to" || data === "both")) {
    validate118.errors = [{ instancePath, schemaPath: "#/enum", keyword: "enum", params: { allowedValues: schema42.enum }, message: "must be equal to one of the allowed values" }];
    return false;
  }
  validate118.errors = vErrors;
  return errors === 0;
}
validate118.evaluated = { "dynamicProps": false, "dynamicItems": false };
function validate114(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate114.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.bars === void 0 && (missing0 = "bars") || data.by === void 0 && (missing0 = "by")) {
        validate114.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "id" || key0 === "bars" || key0 === "ends" || key0 === "onto" || key0 === "by")) {
            validate114.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.id !== void 0) {
            const _errs2 = errors;
            if (!validate71(data.id, { instancePath: instancePath + "/id", parentData: data, parentDataProperty: "id", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate71.errors : vErrors.concat(validate71.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.bars !== void 0) {
              let data1 = data.bars;
              const _errs3 = errors;
              if (errors === _errs3) {
                if (Array.isArray(data1)) {
                  if (data1.length < 1) {
                    validate114.errors = [{ instancePath: instancePath + "/bars", schemaPath: "#/properties/bars/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" }];
                    return false;
                  } else {
                    var valid1 = true;
                    const len0 = data1.length;
                    for (let i0 = 0; i0 < len0; i0++) {
                      const _errs5 = errors;
                      if (!validate116(data1[i0], { instancePath: instancePath + "/bars/" + i0, parentData: data1, parentDataProperty: i0, rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate116.errors : vErrors.concat(validate116.errors);
                        errors = vErrors.length;
                      }
                      var valid1 = _errs5 === errors;
                      if (!valid1) {
                        break;
                      }
                    }
                  }
                } else {
                  validate114.errors = [{ instancePath: instancePath + "/bars", schemaPath: "#/properties/bars/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                  return false;
                }
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.ends !== void 0) {
                const _errs6 = errors;
                if (!validate118(data.ends, { instancePath: instancePath + "/ends", parentData: data, parentDataProperty: "ends", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate118.errors : vErrors.concat(validate118.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs6 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.onto !== void 0) {
                  const _errs7 = errors;
                  if (!validate116(data.onto, { instancePath: instancePath + "/onto", parentData: data, parentDataProperty: "onto", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate116.errors : vErrors.concat(validate116.errors);
                    errors = vErrors.length;
                  }
                  var valid0 = _errs7 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.by !== void 0) {
                    let data5 = data.by;
                    const _errs8 = errors;
                    const _errs9 = errors;
                    let valid2 = false;
                    const _errs10 = errors;
                    if (errors === _errs10) {
                      if (typeof data5 === "string") {
                        if (func2(data5) < 1) {
                          const err0 = { instancePath: instancePath + "/by", schemaPath: "#/properties/by/anyOf/0/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                          if (vErrors === null) {
                            vErrors = [err0];
                          } else {
                            vErrors.push(err0);
                          }
                          errors++;
                        }
                      } else {
                        const err1 = { instancePath: instancePath + "/by", schemaPath: "#/properties/by/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                        if (vErrors === null) {
                          vErrors = [err1];
                        } else {
                          vErrors.push(err1);
                        }
                        errors++;
                      }
                    }
                    var _valid0 = _errs10 === errors;
                    valid2 = valid2 || _valid0;
                    const _errs12 = errors;
                    if (!validate73(data5, { instancePath: instancePath + "/by", parentData: data, parentDataProperty: "by", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate73.errors : vErrors.concat(validate73.errors);
                      errors = vErrors.length;
                    }
                    var _valid0 = _errs12 === errors;
                    valid2 = valid2 || _valid0;
                    if (!valid2) {
                      const err2 = { instancePath: instancePath + "/by", schemaPath: "#/properties/by/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                      if (vErrors === null) {
                        vErrors = [err2];
                      } else {
                        vErrors.push(err2);
                      }
                      errors++;
                      validate114.errors = vErrors;
                      return false;
                    } else {
                      errors = _errs9;
                      if (vErrors !== null) {
                        if (_errs9) {
                          vErrors.length = _errs9;
                        } else {
                          vErrors = null;
                        }
                      }
                    }
                    var valid0 = _errs8 === errors;
                  } else {
                    var valid0 = true;
                  }
                }
              }
            }
          }
        }
      }
    } else {
      validate114.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate114.errors = vErrors;
  return errors === 0;
}
validate114.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var schema43 = { "type": "object", "required": ["part", "on", "at", "holds"], "additionalProperties": false, "description": "A plate or bracket placed by hand.", "properties": { "id": { "$ref": "#/$defs/id" }, "part": { "type": "string", "minLength": 1, "description": "Name of a connector in stock." }, "on": { "$ref": "#/$defs/face", "description": "The face of the first bar held; a plate lies on it, a bracket has its first leg there." }, "against": { "$ref": "#/$defs/face", "description": "For a bracket: the face of the second bar held that carries the other leg." }, "at": { "$ref": "#/$defs/point", "description": "Where the part's own zero point comes to lie (brought into the face)." }, "turn": { "$ref": "#/$defs/angle", "description": "Turn of a plate about the outward normal of its face, from the direction of the first bar." }, "holds": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/ref" }, "description": "The bars it holds together; the first carries the face named by on." }, "screw": { "type": "string", "description": "A screw of stock instead of the connector's own." }, "nut": { "enum": ["end-load", "drop-in"], "description": "Kind of T-nut under its screws; standard defaults.nut." }, "torque": { "anyOf": [{ "const": "rated" }, { "$ref": "#/$defs/moment" }], "description": "Tightening torque of its screws; standard defaults.torque." }, "lock": { "enum": ["none", "thread-lock", "washer"], "description": "What keeps its screws from loosening; standard defaults.lock." }, "omit": { "type": "array", "items": { "type": "string" }, "description": "Holes left without a screw." } }, "examples": [{ "part": "plate-T-40", "on": "+y", "at": [0, -20, 800], "turn": 90, "holds": ["leg-1", "rail-1"], "omit": ["h5"] }] };
function validate123(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate123.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.part === void 0 && (missing0 = "part") || data.on === void 0 && (missing0 = "on") || data.at === void 0 && (missing0 = "at") || data.holds === void 0 && (missing0 = "holds")) {
        validate123.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!func1.call(schema43.properties, key0)) {
            validate123.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.id !== void 0) {
            const _errs2 = errors;
            if (!validate71(data.id, { instancePath: instancePath + "/id", parentData: data, parentDataProperty: "id", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate71.errors : vErrors.concat(validate71.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.part !== void 0) {
              let data1 = data.part;
              const _errs3 = errors;
              if (errors === _errs3) {
                if (typeof data1 === "string") {
                  if (func2(data1) < 1) {
                    validate123.errors = [{ instancePath: instancePath + "/part", schemaPath: "#/properties/part/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
                    return false;
                  }
                } else {
                  validate123.errors = [{ instancePath: instancePath + "/part", schemaPath: "#/properties/part/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                  return false;
                }
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.on !== void 0) {
                const _errs5 = errors;
                if (!validate75(data.on, { instancePath: instancePath + "/on", parentData: data, parentDataProperty: "on", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate75.errors : vErrors.concat(validate75.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs5 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.against !== void 0) {
                  const _errs6 = errors;
                  if (!validate75(data.against, { instancePath: instancePath + "/against", parentData: data, parentDataProperty: "against", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate75.errors : vErrors.concat(validate75.errors);
                    errors = vErrors.length;
                  }
                  var valid0 = _errs6 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.at !== void 0) {
                    const _errs7 = errors;
                    if (!validate86(data.at, { instancePath: instancePath + "/at", parentData: data, parentDataProperty: "at", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate86.errors : vErrors.concat(validate86.errors);
                      errors = vErrors.length;
                    }
                    var valid0 = _errs7 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.turn !== void 0) {
                      const _errs8 = errors;
                      if (!validate96(data.turn, { instancePath: instancePath + "/turn", parentData: data, parentDataProperty: "turn", rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate96.errors : vErrors.concat(validate96.errors);
                        errors = vErrors.length;
                      }
                      var valid0 = _errs8 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.holds !== void 0) {
                        let data6 = data.holds;
                        const _errs9 = errors;
                        if (errors === _errs9) {
                          if (Array.isArray(data6)) {
                            if (data6.length < 1) {
                              validate123.errors = [{ instancePath: instancePath + "/holds", schemaPath: "#/properties/holds/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" }];
                              return false;
                            } else {
                              var valid1 = true;
                              const len0 = data6.length;
                              for (let i0 = 0; i0 < len0; i0++) {
                                const _errs11 = errors;
                                if (!validate116(data6[i0], { instancePath: instancePath + "/holds/" + i0, parentData: data6, parentDataProperty: i0, rootData, dynamicAnchors })) {
                                  vErrors = vErrors === null ? validate116.errors : vErrors.concat(validate116.errors);
                                  errors = vErrors.length;
                                }
                                var valid1 = _errs11 === errors;
                                if (!valid1) {
                                  break;
                                }
                              }
                            }
                          } else {
                            validate123.errors = [{ instancePath: instancePath + "/holds", schemaPath: "#/properties/holds/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                            return false;
                          }
                        }
                        var valid0 = _errs9 === errors;
                      } else {
                        var valid0 = true;
                      }
                      if (valid0) {
                        if (data.screw !== void 0) {
                          const _errs12 = errors;
                          if (typeof data.screw !== "string") {
                            validate123.errors = [{ instancePath: instancePath + "/screw", schemaPath: "#/properties/screw/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                            return false;
                          }
                          var valid0 = _errs12 === errors;
                        } else {
                          var valid0 = true;
                        }
                        if (valid0) {
                          if (data.nut !== void 0) {
                            let data9 = data.nut;
                            const _errs14 = errors;
                            if (!(data9 === "end-load" || data9 === "drop-in")) {
                              validate123.errors = [{ instancePath: instancePath + "/nut", schemaPath: "#/properties/nut/enum", keyword: "enum", params: { allowedValues: schema43.properties.nut.enum }, message: "must be equal to one of the allowed values" }];
                              return false;
                            }
                            var valid0 = _errs14 === errors;
                          } else {
                            var valid0 = true;
                          }
                          if (valid0) {
                            if (data.torque !== void 0) {
                              let data10 = data.torque;
                              const _errs15 = errors;
                              const _errs16 = errors;
                              let valid2 = false;
                              const _errs17 = errors;
                              if ("rated" !== data10) {
                                const err0 = { instancePath: instancePath + "/torque", schemaPath: "#/properties/torque/anyOf/0/const", keyword: "const", params: { allowedValue: "rated" }, message: "must be equal to constant" };
                                if (vErrors === null) {
                                  vErrors = [err0];
                                } else {
                                  vErrors.push(err0);
                                }
                                errors++;
                              }
                              var _valid0 = _errs17 === errors;
                              valid2 = valid2 || _valid0;
                              const _errs18 = errors;
                              if (!validate54(data10, { instancePath: instancePath + "/torque", parentData: data, parentDataProperty: "torque", rootData, dynamicAnchors })) {
                                vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
                                errors = vErrors.length;
                              }
                              var _valid0 = _errs18 === errors;
                              valid2 = valid2 || _valid0;
                              if (!valid2) {
                                const err1 = { instancePath: instancePath + "/torque", schemaPath: "#/properties/torque/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                                if (vErrors === null) {
                                  vErrors = [err1];
                                } else {
                                  vErrors.push(err1);
                                }
                                errors++;
                                validate123.errors = vErrors;
                                return false;
                              } else {
                                errors = _errs16;
                                if (vErrors !== null) {
                                  if (_errs16) {
                                    vErrors.length = _errs16;
                                  } else {
                                    vErrors = null;
                                  }
                                }
                              }
                              var valid0 = _errs15 === errors;
                            } else {
                              var valid0 = true;
                            }
                            if (valid0) {
                              if (data.lock !== void 0) {
                                let data11 = data.lock;
                                const _errs19 = errors;
                                if (!(data11 === "none" || data11 === "thread-lock" || data11 === "washer")) {
                                  validate123.errors = [{ instancePath: instancePath + "/lock", schemaPath: "#/properties/lock/enum", keyword: "enum", params: { allowedValues: schema43.properties.lock.enum }, message: "must be equal to one of the allowed values" }];
                                  return false;
                                }
                                var valid0 = _errs19 === errors;
                              } else {
                                var valid0 = true;
                              }
                              if (valid0) {
                                if (data.omit !== void 0) {
                                  let data12 = data.omit;
                                  const _errs20 = errors;
                                  if (errors === _errs20) {
                                    if (Array.isArray(data12)) {
                                      var valid3 = true;
                                      const len1 = data12.length;
                                      for (let i1 = 0; i1 < len1; i1++) {
                                        const _errs22 = errors;
                                        if (typeof data12[i1] !== "string") {
                                          validate123.errors = [{ instancePath: instancePath + "/omit/" + i1, schemaPath: "#/properties/omit/items/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                          return false;
                                        }
                                        var valid3 = _errs22 === errors;
                                        if (!valid3) {
                                          break;
                                        }
                                      }
                                    } else {
                                      validate123.errors = [{ instancePath: instancePath + "/omit", schemaPath: "#/properties/omit/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                      return false;
                                    }
                                  }
                                  var valid0 = _errs20 === errors;
                                } else {
                                  var valid0 = true;
                                }
                              }
                            }
                          }
                        }
                      }
                    }
                  }
                }
              }
            }
          }
        }
      }
    } else {
      validate123.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate123.errors = vErrors;
  return errors === 0;
}
validate123.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
function validate132(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate132.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.bars === void 0 && (missing0 = "bars") || data.part === void 0 && (missing0 = "part") || data.at === void 0 && (missing0 = "at")) {
        validate132.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "id" || key0 === "bars" || key0 === "part" || key0 === "at")) {
            validate132.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.id !== void 0) {
            const _errs2 = errors;
            if (!validate71(data.id, { instancePath: instancePath + "/id", parentData: data, parentDataProperty: "id", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate71.errors : vErrors.concat(validate71.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.bars !== void 0) {
              let data1 = data.bars;
              const _errs3 = errors;
              if (errors === _errs3) {
                if (Array.isArray(data1)) {
                  if (data1.length > 2) {
                    validate132.errors = [{ instancePath: instancePath + "/bars", schemaPath: "#/properties/bars/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" }];
                    return false;
                  } else {
                    if (data1.length < 2) {
                      validate132.errors = [{ instancePath: instancePath + "/bars", schemaPath: "#/properties/bars/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" }];
                      return false;
                    } else {
                      var valid1 = true;
                      const len0 = data1.length;
                      for (let i0 = 0; i0 < len0; i0++) {
                        const _errs6 = errors;
                        if (!validate116(data1[i0], { instancePath: instancePath + "/bars/" + i0, parentData: data1, parentDataProperty: i0, rootData, dynamicAnchors })) {
                          vErrors = vErrors === null ? validate116.errors : vErrors.concat(validate116.errors);
                          errors = vErrors.length;
                        }
                        var valid1 = _errs6 === errors;
                        if (!valid1) {
                          break;
                        }
                      }
                    }
                  }
                } else {
                  validate132.errors = [{ instancePath: instancePath + "/bars", schemaPath: "#/properties/bars/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                  return false;
                }
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.part !== void 0) {
                let data3 = data.part;
                const _errs7 = errors;
                if (errors === _errs7) {
                  if (typeof data3 === "string") {
                    if (func2(data3) < 1) {
                      validate132.errors = [{ instancePath: instancePath + "/part", schemaPath: "#/properties/part/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
                      return false;
                    }
                  } else {
                    validate132.errors = [{ instancePath: instancePath + "/part", schemaPath: "#/properties/part/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                    return false;
                  }
                }
                var valid0 = _errs7 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.at !== void 0) {
                  let data4 = data.at;
                  const _errs9 = errors;
                  if (errors === _errs9) {
                    if (Array.isArray(data4)) {
                      if (data4.length < 1) {
                        validate132.errors = [{ instancePath: instancePath + "/at", schemaPath: "#/properties/at/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" }];
                        return false;
                      } else {
                        var valid2 = true;
                        const len1 = data4.length;
                        for (let i1 = 0; i1 < len1; i1++) {
                          const _errs11 = errors;
                          if (!validate63(data4[i1], { instancePath: instancePath + "/at/" + i1, parentData: data4, parentDataProperty: i1, rootData, dynamicAnchors })) {
                            vErrors = vErrors === null ? validate63.errors : vErrors.concat(validate63.errors);
                            errors = vErrors.length;
                          }
                          var valid2 = _errs11 === errors;
                          if (!valid2) {
                            break;
                          }
                        }
                      }
                    } else {
                      validate132.errors = [{ instancePath: instancePath + "/at", schemaPath: "#/properties/at/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                      return false;
                    }
                  }
                  var valid0 = _errs9 === errors;
                } else {
                  var valid0 = true;
                }
              }
            }
          }
        }
      }
    } else {
      validate132.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate132.errors = vErrors;
  return errors === 0;
}
validate132.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
function validate137(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate137.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.bars === void 0 && (missing0 = "bars") || data.part === void 0 && (missing0 = "part") || data.at === void 0 && (missing0 = "at") || data.axis === void 0 && (missing0 = "axis")) {
        validate137.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "id" || key0 === "bars" || key0 === "part" || key0 === "at" || key0 === "axis" || key0 === "locked")) {
            validate137.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.id !== void 0) {
            const _errs2 = errors;
            if (!validate71(data.id, { instancePath: instancePath + "/id", parentData: data, parentDataProperty: "id", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate71.errors : vErrors.concat(validate71.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.bars !== void 0) {
              let data1 = data.bars;
              const _errs3 = errors;
              if (errors === _errs3) {
                if (Array.isArray(data1)) {
                  if (data1.length > 2) {
                    validate137.errors = [{ instancePath: instancePath + "/bars", schemaPath: "#/properties/bars/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" }];
                    return false;
                  } else {
                    if (data1.length < 2) {
                      validate137.errors = [{ instancePath: instancePath + "/bars", schemaPath: "#/properties/bars/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" }];
                      return false;
                    } else {
                      var valid1 = true;
                      const len0 = data1.length;
                      for (let i0 = 0; i0 < len0; i0++) {
                        const _errs6 = errors;
                        if (!validate116(data1[i0], { instancePath: instancePath + "/bars/" + i0, parentData: data1, parentDataProperty: i0, rootData, dynamicAnchors })) {
                          vErrors = vErrors === null ? validate116.errors : vErrors.concat(validate116.errors);
                          errors = vErrors.length;
                        }
                        var valid1 = _errs6 === errors;
                        if (!valid1) {
                          break;
                        }
                      }
                    }
                  }
                } else {
                  validate137.errors = [{ instancePath: instancePath + "/bars", schemaPath: "#/properties/bars/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                  return false;
                }
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.part !== void 0) {
                let data3 = data.part;
                const _errs7 = errors;
                if (errors === _errs7) {
                  if (typeof data3 === "string") {
                    if (func2(data3) < 1) {
                      validate137.errors = [{ instancePath: instancePath + "/part", schemaPath: "#/properties/part/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
                      return false;
                    }
                  } else {
                    validate137.errors = [{ instancePath: instancePath + "/part", schemaPath: "#/properties/part/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                    return false;
                  }
                }
                var valid0 = _errs7 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.at !== void 0) {
                  const _errs9 = errors;
                  if (!validate86(data.at, { instancePath: instancePath + "/at", parentData: data, parentDataProperty: "at", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate86.errors : vErrors.concat(validate86.errors);
                    errors = vErrors.length;
                  }
                  var valid0 = _errs9 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.axis !== void 0) {
                    const _errs10 = errors;
                    if (!validate92(data.axis, { instancePath: instancePath + "/axis", parentData: data, parentDataProperty: "axis", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate92.errors : vErrors.concat(validate92.errors);
                      errors = vErrors.length;
                    }
                    var valid0 = _errs10 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.locked !== void 0) {
                      const _errs11 = errors;
                      if (typeof data.locked !== "boolean") {
                        validate137.errors = [{ instancePath: instancePath + "/locked", schemaPath: "#/properties/locked/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" }];
                        return false;
                      }
                      var valid0 = _errs11 === errors;
                    } else {
                      var valid0 = true;
                    }
                  }
                }
              }
            }
          }
        }
      }
    } else {
      validate137.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate137.errors = vErrors;
  return errors === 0;
}
validate137.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var schema46 = { "type": "object", "required": ["id", "sheet", "held"], "additionalProperties": false, "description": "A sheet.", "properties": { "id": { "$ref": "#/$defs/id" }, "sheet": { "type": "string", "minLength": 1, "description": "Name of a sheet in stock.", "examples": ["polycarbonate-5"] }, "held": { "enum": ["in-slot", "on-face", "laid"], "description": "in-slot: edges in the slots of bars. on-face: screwed to faces. laid: resting on bars, held by its weight." }, "edges": { "type": "array", "minItems": 2, "items": { "$ref": "#/$defs/panelEdge" }, "description": "For in-slot: the bars round the panel in order." }, "bars": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/ref" }, "description": "For on-face and laid: the bars it lies on; it covers the rectangle round their faces, its sides along the bars." }, "on": { "$ref": "#/$defs/direction", "description": "For on-face and laid: the side of the bars it lies on; standard +z for laid." }, "overhang": { "type": "array", "items": { "$ref": "#/$defs/length" }, "minItems": 4, "maxItems": 4, "tsType": "[Length, Length, Length, Length]", "description": "How far it stands past the bars: towards \u2212, + of the side nearest to the first in-plane axis, then \u2212, + of the other (x before y before z)." }, "gasket": { "type": "string", "description": "Name of a gasket in stock." }, "screws": { "type": "object", "required": ["pitch"], "additionalProperties": false, "properties": { "pitch": { "$ref": "#/$defs/length", "description": "Greatest distance between two screws along a bar." }, "screw": { "type": "string", "description": "A screw of stock." } }, "description": "Screws of an on-face panel, at most this far apart." }, "size": { "type": "array", "items": { "$ref": "#/$defs/length" }, "minItems": 2, "maxItems": 2, "tsType": "[Length, Length]", "description": "Size as ordered, along the first in-plane axis, then the second (x before y before z); derived when left out." }, "notches": { "type": "array", "items": { "$ref": "#/$defs/length" }, "minItems": 2, "maxItems": 2, "tsType": "[Length, Length]", "description": "Notches as cut in all four corners: along the first in-plane axis, then the second, as size." }, "criteria": { "$ref": "#/$defs/criteria" } } };
function validate145(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate145.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  const _errs0 = errors;
  let valid0 = false;
  const _errs1 = errors;
  if ("free" !== data) {
    const err0 = { instancePath, schemaPath: "#/anyOf/0/const", keyword: "const", params: { allowedValue: "free" }, message: "must be equal to constant" };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  var _valid0 = _errs1 === errors;
  valid0 = valid0 || _valid0;
  const _errs2 = errors;
  if (errors === _errs2) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.bar === void 0 && (missing0 = "bar")) {
        const err1 = { instancePath, schemaPath: "#/anyOf/1/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      } else {
        const _errs4 = errors;
        for (const key0 in data) {
          if (!(key0 === "bar" || key0 === "slot")) {
            const err2 = { instancePath, schemaPath: "#/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
            if (vErrors === null) {
              vErrors = [err2];
            } else {
              vErrors.push(err2);
            }
            errors++;
            break;
          }
        }
        if (_errs4 === errors) {
          if (data.bar !== void 0) {
            const _errs5 = errors;
            if (!validate116(data.bar, { instancePath: instancePath + "/bar", parentData: data, parentDataProperty: "bar", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate116.errors : vErrors.concat(validate116.errors);
              errors = vErrors.length;
            }
            var valid1 = _errs5 === errors;
          } else {
            var valid1 = true;
          }
          if (valid1) {
            if (data.slot !== void 0) {
              const _errs6 = errors;
              if (!validate77(data.slot, { instancePath: instancePath + "/slot", parentData: data, parentDataProperty: "slot", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate77.errors : vErrors.concat(validate77.errors);
                errors = vErrors.length;
              }
              var valid1 = _errs6 === errors;
            } else {
              var valid1 = true;
            }
          }
        }
      }
    } else {
      const err3 = { instancePath, schemaPath: "#/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
  }
  var _valid0 = _errs2 === errors;
  valid0 = valid0 || _valid0;
  if (_valid0) {
    var props0 = true;
  }
  if (!valid0) {
    const err4 = { instancePath, schemaPath: "#/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
    if (vErrors === null) {
      vErrors = [err4];
    } else {
      vErrors.push(err4);
    }
    errors++;
    validate145.errors = vErrors;
    return false;
  } else {
    errors = _errs0;
    if (vErrors !== null) {
      if (_errs0) {
        vErrors.length = _errs0;
      } else {
        vErrors = null;
      }
    }
  }
  validate145.errors = vErrors;
  evaluated0.props = props0;
  return errors === 0;
}
validate145.evaluated = { "dynamicProps": true, "dynamicItems": false };
function validate143(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate143.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.id === void 0 && (missing0 = "id") || data.sheet === void 0 && (missing0 = "sheet") || data.held === void 0 && (missing0 = "held")) {
        validate143.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!func1.call(schema46.properties, key0)) {
            validate143.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.id !== void 0) {
            const _errs2 = errors;
            if (!validate71(data.id, { instancePath: instancePath + "/id", parentData: data, parentDataProperty: "id", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate71.errors : vErrors.concat(validate71.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.sheet !== void 0) {
              let data1 = data.sheet;
              const _errs3 = errors;
              if (errors === _errs3) {
                if (typeof data1 === "string") {
                  if (func2(data1) < 1) {
                    validate143.errors = [{ instancePath: instancePath + "/sheet", schemaPath: "#/properties/sheet/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
                    return false;
                  }
                } else {
                  validate143.errors = [{ instancePath: instancePath + "/sheet", schemaPath: "#/properties/sheet/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                  return false;
                }
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.held !== void 0) {
                let data2 = data.held;
                const _errs5 = errors;
                if (!(data2 === "in-slot" || data2 === "on-face" || data2 === "laid")) {
                  validate143.errors = [{ instancePath: instancePath + "/held", schemaPath: "#/properties/held/enum", keyword: "enum", params: { allowedValues: schema46.properties.held.enum }, message: "must be equal to one of the allowed values" }];
                  return false;
                }
                var valid0 = _errs5 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.edges !== void 0) {
                  let data3 = data.edges;
                  const _errs6 = errors;
                  if (errors === _errs6) {
                    if (Array.isArray(data3)) {
                      if (data3.length < 2) {
                        validate143.errors = [{ instancePath: instancePath + "/edges", schemaPath: "#/properties/edges/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" }];
                        return false;
                      } else {
                        var valid1 = true;
                        const len0 = data3.length;
                        for (let i0 = 0; i0 < len0; i0++) {
                          const _errs8 = errors;
                          if (!validate145(data3[i0], { instancePath: instancePath + "/edges/" + i0, parentData: data3, parentDataProperty: i0, rootData, dynamicAnchors })) {
                            vErrors = vErrors === null ? validate145.errors : vErrors.concat(validate145.errors);
                            errors = vErrors.length;
                          }
                          var valid1 = _errs8 === errors;
                          if (!valid1) {
                            break;
                          }
                        }
                      }
                    } else {
                      validate143.errors = [{ instancePath: instancePath + "/edges", schemaPath: "#/properties/edges/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                      return false;
                    }
                  }
                  var valid0 = _errs6 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.bars !== void 0) {
                    let data5 = data.bars;
                    const _errs9 = errors;
                    if (errors === _errs9) {
                      if (Array.isArray(data5)) {
                        if (data5.length < 1) {
                          validate143.errors = [{ instancePath: instancePath + "/bars", schemaPath: "#/properties/bars/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" }];
                          return false;
                        } else {
                          var valid2 = true;
                          const len1 = data5.length;
                          for (let i1 = 0; i1 < len1; i1++) {
                            const _errs11 = errors;
                            if (!validate116(data5[i1], { instancePath: instancePath + "/bars/" + i1, parentData: data5, parentDataProperty: i1, rootData, dynamicAnchors })) {
                              vErrors = vErrors === null ? validate116.errors : vErrors.concat(validate116.errors);
                              errors = vErrors.length;
                            }
                            var valid2 = _errs11 === errors;
                            if (!valid2) {
                              break;
                            }
                          }
                        }
                      } else {
                        validate143.errors = [{ instancePath: instancePath + "/bars", schemaPath: "#/properties/bars/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                        return false;
                      }
                    }
                    var valid0 = _errs9 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.on !== void 0) {
                      const _errs12 = errors;
                      if (!validate92(data.on, { instancePath: instancePath + "/on", parentData: data, parentDataProperty: "on", rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate92.errors : vErrors.concat(validate92.errors);
                        errors = vErrors.length;
                      }
                      var valid0 = _errs12 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.overhang !== void 0) {
                        let data8 = data.overhang;
                        const _errs13 = errors;
                        if (errors === _errs13) {
                          if (Array.isArray(data8)) {
                            if (data8.length > 4) {
                              validate143.errors = [{ instancePath: instancePath + "/overhang", schemaPath: "#/properties/overhang/maxItems", keyword: "maxItems", params: { limit: 4 }, message: "must NOT have more than 4 items" }];
                              return false;
                            } else {
                              if (data8.length < 4) {
                                validate143.errors = [{ instancePath: instancePath + "/overhang", schemaPath: "#/properties/overhang/minItems", keyword: "minItems", params: { limit: 4 }, message: "must NOT have fewer than 4 items" }];
                                return false;
                              } else {
                                var valid3 = true;
                                const len2 = data8.length;
                                for (let i2 = 0; i2 < len2; i2++) {
                                  const _errs16 = errors;
                                  if (!validate63(data8[i2], { instancePath: instancePath + "/overhang/" + i2, parentData: data8, parentDataProperty: i2, rootData, dynamicAnchors })) {
                                    vErrors = vErrors === null ? validate63.errors : vErrors.concat(validate63.errors);
                                    errors = vErrors.length;
                                  }
                                  var valid3 = _errs16 === errors;
                                  if (!valid3) {
                                    break;
                                  }
                                }
                              }
                            }
                          } else {
                            validate143.errors = [{ instancePath: instancePath + "/overhang", schemaPath: "#/properties/overhang/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                            return false;
                          }
                        }
                        var valid0 = _errs13 === errors;
                      } else {
                        var valid0 = true;
                      }
                      if (valid0) {
                        if (data.gasket !== void 0) {
                          const _errs17 = errors;
                          if (typeof data.gasket !== "string") {
                            validate143.errors = [{ instancePath: instancePath + "/gasket", schemaPath: "#/properties/gasket/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                            return false;
                          }
                          var valid0 = _errs17 === errors;
                        } else {
                          var valid0 = true;
                        }
                        if (valid0) {
                          if (data.screws !== void 0) {
                            let data11 = data.screws;
                            const _errs19 = errors;
                            if (errors === _errs19) {
                              if (data11 && typeof data11 == "object" && !Array.isArray(data11)) {
                                let missing1;
                                if (data11.pitch === void 0 && (missing1 = "pitch")) {
                                  validate143.errors = [{ instancePath: instancePath + "/screws", schemaPath: "#/properties/screws/required", keyword: "required", params: { missingProperty: missing1 }, message: "must have required property '" + missing1 + "'" }];
                                  return false;
                                } else {
                                  const _errs21 = errors;
                                  for (const key1 in data11) {
                                    if (!(key1 === "pitch" || key1 === "screw")) {
                                      validate143.errors = [{ instancePath: instancePath + "/screws", schemaPath: "#/properties/screws/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties" }];
                                      return false;
                                      break;
                                    }
                                  }
                                  if (_errs21 === errors) {
                                    if (data11.pitch !== void 0) {
                                      const _errs22 = errors;
                                      if (!validate63(data11.pitch, { instancePath: instancePath + "/screws/pitch", parentData: data11, parentDataProperty: "pitch", rootData, dynamicAnchors })) {
                                        vErrors = vErrors === null ? validate63.errors : vErrors.concat(validate63.errors);
                                        errors = vErrors.length;
                                      }
                                      var valid4 = _errs22 === errors;
                                    } else {
                                      var valid4 = true;
                                    }
                                    if (valid4) {
                                      if (data11.screw !== void 0) {
                                        const _errs23 = errors;
                                        if (typeof data11.screw !== "string") {
                                          validate143.errors = [{ instancePath: instancePath + "/screws/screw", schemaPath: "#/properties/screws/properties/screw/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                          return false;
                                        }
                                        var valid4 = _errs23 === errors;
                                      } else {
                                        var valid4 = true;
                                      }
                                    }
                                  }
                                }
                              } else {
                                validate143.errors = [{ instancePath: instancePath + "/screws", schemaPath: "#/properties/screws/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                                return false;
                              }
                            }
                            var valid0 = _errs19 === errors;
                          } else {
                            var valid0 = true;
                          }
                          if (valid0) {
                            if (data.size !== void 0) {
                              let data14 = data.size;
                              const _errs25 = errors;
                              if (errors === _errs25) {
                                if (Array.isArray(data14)) {
                                  if (data14.length > 2) {
                                    validate143.errors = [{ instancePath: instancePath + "/size", schemaPath: "#/properties/size/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" }];
                                    return false;
                                  } else {
                                    if (data14.length < 2) {
                                      validate143.errors = [{ instancePath: instancePath + "/size", schemaPath: "#/properties/size/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" }];
                                      return false;
                                    } else {
                                      var valid5 = true;
                                      const len3 = data14.length;
                                      for (let i3 = 0; i3 < len3; i3++) {
                                        const _errs28 = errors;
                                        if (!validate63(data14[i3], { instancePath: instancePath + "/size/" + i3, parentData: data14, parentDataProperty: i3, rootData, dynamicAnchors })) {
                                          vErrors = vErrors === null ? validate63.errors : vErrors.concat(validate63.errors);
                                          errors = vErrors.length;
                                        }
                                        var valid5 = _errs28 === errors;
                                        if (!valid5) {
                                          break;
                                        }
                                      }
                                    }
                                  }
                                } else {
                                  validate143.errors = [{ instancePath: instancePath + "/size", schemaPath: "#/properties/size/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                  return false;
                                }
                              }
                              var valid0 = _errs25 === errors;
                            } else {
                              var valid0 = true;
                            }
                            if (valid0) {
                              if (data.notches !== void 0) {
                                let data16 = data.notches;
                                const _errs29 = errors;
                                if (errors === _errs29) {
                                  if (Array.isArray(data16)) {
                                    if (data16.length > 2) {
                                      validate143.errors = [{ instancePath: instancePath + "/notches", schemaPath: "#/properties/notches/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" }];
                                      return false;
                                    } else {
                                      if (data16.length < 2) {
                                        validate143.errors = [{ instancePath: instancePath + "/notches", schemaPath: "#/properties/notches/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" }];
                                        return false;
                                      } else {
                                        var valid6 = true;
                                        const len4 = data16.length;
                                        for (let i4 = 0; i4 < len4; i4++) {
                                          const _errs32 = errors;
                                          if (!validate63(data16[i4], { instancePath: instancePath + "/notches/" + i4, parentData: data16, parentDataProperty: i4, rootData, dynamicAnchors })) {
                                            vErrors = vErrors === null ? validate63.errors : vErrors.concat(validate63.errors);
                                            errors = vErrors.length;
                                          }
                                          var valid6 = _errs32 === errors;
                                          if (!valid6) {
                                            break;
                                          }
                                        }
                                      }
                                    }
                                  } else {
                                    validate143.errors = [{ instancePath: instancePath + "/notches", schemaPath: "#/properties/notches/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                    return false;
                                  }
                                }
                                var valid0 = _errs29 === errors;
                              } else {
                                var valid0 = true;
                              }
                              if (valid0) {
                                if (data.criteria !== void 0) {
                                  const _errs33 = errors;
                                  if (!validate67(data.criteria, { instancePath: instancePath + "/criteria", parentData: data, parentDataProperty: "criteria", rootData, dynamicAnchors })) {
                                    vErrors = vErrors === null ? validate67.errors : vErrors.concat(validate67.errors);
                                    errors = vErrors.length;
                                  }
                                  var valid0 = _errs33 === errors;
                                } else {
                                  var valid0 = true;
                                }
                              }
                            }
                          }
                        }
                      }
                    }
                  }
                }
              }
            }
          }
        }
      }
    } else {
      validate143.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate143.errors = vErrors;
  return errors === 0;
}
validate143.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
function validate157(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate157.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.id === void 0 && (missing0 = "id") || data.bars === void 0 && (missing0 = "bars") || data.hinges === void 0 && (missing0 = "hinges") || data.axis === void 0 && (missing0 = "axis") || data.swing === void 0 && (missing0 = "swing")) {
        validate157.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "id" || key0 === "bars" || key0 === "panels" || key0 === "axis" || key0 === "hinges" || key0 === "latch" || key0 === "swing")) {
            validate157.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.id !== void 0) {
            const _errs2 = errors;
            if (!validate71(data.id, { instancePath: instancePath + "/id", parentData: data, parentDataProperty: "id", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate71.errors : vErrors.concat(validate71.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.bars !== void 0) {
              let data1 = data.bars;
              const _errs3 = errors;
              if (errors === _errs3) {
                if (Array.isArray(data1)) {
                  if (data1.length < 1) {
                    validate157.errors = [{ instancePath: instancePath + "/bars", schemaPath: "#/properties/bars/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" }];
                    return false;
                  } else {
                    var valid1 = true;
                    const len0 = data1.length;
                    for (let i0 = 0; i0 < len0; i0++) {
                      const _errs5 = errors;
                      if (!validate116(data1[i0], { instancePath: instancePath + "/bars/" + i0, parentData: data1, parentDataProperty: i0, rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate116.errors : vErrors.concat(validate116.errors);
                        errors = vErrors.length;
                      }
                      var valid1 = _errs5 === errors;
                      if (!valid1) {
                        break;
                      }
                    }
                  }
                } else {
                  validate157.errors = [{ instancePath: instancePath + "/bars", schemaPath: "#/properties/bars/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                  return false;
                }
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.panels !== void 0) {
                let data3 = data.panels;
                const _errs6 = errors;
                if (errors === _errs6) {
                  if (Array.isArray(data3)) {
                    var valid2 = true;
                    const len1 = data3.length;
                    for (let i1 = 0; i1 < len1; i1++) {
                      const _errs8 = errors;
                      if (!validate116(data3[i1], { instancePath: instancePath + "/panels/" + i1, parentData: data3, parentDataProperty: i1, rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate116.errors : vErrors.concat(validate116.errors);
                        errors = vErrors.length;
                      }
                      var valid2 = _errs8 === errors;
                      if (!valid2) {
                        break;
                      }
                    }
                  } else {
                    validate157.errors = [{ instancePath: instancePath + "/panels", schemaPath: "#/properties/panels/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                    return false;
                  }
                }
                var valid0 = _errs6 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.axis !== void 0) {
                  const _errs9 = errors;
                  if (!validate92(data.axis, { instancePath: instancePath + "/axis", parentData: data, parentDataProperty: "axis", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate92.errors : vErrors.concat(validate92.errors);
                    errors = vErrors.length;
                  }
                  var valid0 = _errs9 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.hinges !== void 0) {
                    let data6 = data.hinges;
                    const _errs10 = errors;
                    if (errors === _errs10) {
                      if (Array.isArray(data6)) {
                        if (data6.length < 1) {
                          validate157.errors = [{ instancePath: instancePath + "/hinges", schemaPath: "#/properties/hinges/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" }];
                          return false;
                        } else {
                          var valid3 = true;
                          const len2 = data6.length;
                          for (let i2 = 0; i2 < len2; i2++) {
                            let data7 = data6[i2];
                            const _errs12 = errors;
                            if (errors === _errs12) {
                              if (data7 && typeof data7 == "object" && !Array.isArray(data7)) {
                                let missing1;
                                if (data7.part === void 0 && (missing1 = "part") || data7.bars === void 0 && (missing1 = "bars") || data7.at === void 0 && (missing1 = "at")) {
                                  validate157.errors = [{ instancePath: instancePath + "/hinges/" + i2, schemaPath: "#/properties/hinges/items/required", keyword: "required", params: { missingProperty: missing1 }, message: "must have required property '" + missing1 + "'" }];
                                  return false;
                                } else {
                                  const _errs14 = errors;
                                  for (const key1 in data7) {
                                    if (!(key1 === "part" || key1 === "bars" || key1 === "at")) {
                                      validate157.errors = [{ instancePath: instancePath + "/hinges/" + i2, schemaPath: "#/properties/hinges/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties" }];
                                      return false;
                                      break;
                                    }
                                  }
                                  if (_errs14 === errors) {
                                    if (data7.part !== void 0) {
                                      const _errs15 = errors;
                                      if (typeof data7.part !== "string") {
                                        validate157.errors = [{ instancePath: instancePath + "/hinges/" + i2 + "/part", schemaPath: "#/properties/hinges/items/properties/part/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                        return false;
                                      }
                                      var valid4 = _errs15 === errors;
                                    } else {
                                      var valid4 = true;
                                    }
                                    if (valid4) {
                                      if (data7.bars !== void 0) {
                                        let data9 = data7.bars;
                                        const _errs17 = errors;
                                        if (errors === _errs17) {
                                          if (Array.isArray(data9)) {
                                            if (data9.length > 2) {
                                              validate157.errors = [{ instancePath: instancePath + "/hinges/" + i2 + "/bars", schemaPath: "#/properties/hinges/items/properties/bars/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" }];
                                              return false;
                                            } else {
                                              if (data9.length < 2) {
                                                validate157.errors = [{ instancePath: instancePath + "/hinges/" + i2 + "/bars", schemaPath: "#/properties/hinges/items/properties/bars/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" }];
                                                return false;
                                              } else {
                                                var valid5 = true;
                                                const len3 = data9.length;
                                                for (let i3 = 0; i3 < len3; i3++) {
                                                  const _errs20 = errors;
                                                  if (!validate116(data9[i3], { instancePath: instancePath + "/hinges/" + i2 + "/bars/" + i3, parentData: data9, parentDataProperty: i3, rootData, dynamicAnchors })) {
                                                    vErrors = vErrors === null ? validate116.errors : vErrors.concat(validate116.errors);
                                                    errors = vErrors.length;
                                                  }
                                                  var valid5 = _errs20 === errors;
                                                  if (!valid5) {
                                                    break;
                                                  }
                                                }
                                              }
                                            }
                                          } else {
                                            validate157.errors = [{ instancePath: instancePath + "/hinges/" + i2 + "/bars", schemaPath: "#/properties/hinges/items/properties/bars/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                            return false;
                                          }
                                        }
                                        var valid4 = _errs17 === errors;
                                      } else {
                                        var valid4 = true;
                                      }
                                      if (valid4) {
                                        if (data7.at !== void 0) {
                                          const _errs21 = errors;
                                          if (!validate86(data7.at, { instancePath: instancePath + "/hinges/" + i2 + "/at", parentData: data7, parentDataProperty: "at", rootData, dynamicAnchors })) {
                                            vErrors = vErrors === null ? validate86.errors : vErrors.concat(validate86.errors);
                                            errors = vErrors.length;
                                          }
                                          var valid4 = _errs21 === errors;
                                        } else {
                                          var valid4 = true;
                                        }
                                      }
                                    }
                                  }
                                }
                              } else {
                                validate157.errors = [{ instancePath: instancePath + "/hinges/" + i2, schemaPath: "#/properties/hinges/items/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                                return false;
                              }
                            }
                            var valid3 = _errs12 === errors;
                            if (!valid3) {
                              break;
                            }
                          }
                        }
                      } else {
                        validate157.errors = [{ instancePath: instancePath + "/hinges", schemaPath: "#/properties/hinges/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                        return false;
                      }
                    }
                    var valid0 = _errs10 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.latch !== void 0) {
                      let data12 = data.latch;
                      const _errs22 = errors;
                      if (errors === _errs22) {
                        if (data12 && typeof data12 == "object" && !Array.isArray(data12)) {
                          let missing2;
                          if (data12.part === void 0 && (missing2 = "part") || data12.bars === void 0 && (missing2 = "bars") || data12.at === void 0 && (missing2 = "at")) {
                            validate157.errors = [{ instancePath: instancePath + "/latch", schemaPath: "#/properties/latch/required", keyword: "required", params: { missingProperty: missing2 }, message: "must have required property '" + missing2 + "'" }];
                            return false;
                          } else {
                            const _errs24 = errors;
                            for (const key2 in data12) {
                              if (!(key2 === "part" || key2 === "bars" || key2 === "at")) {
                                validate157.errors = [{ instancePath: instancePath + "/latch", schemaPath: "#/properties/latch/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key2 }, message: "must NOT have additional properties" }];
                                return false;
                                break;
                              }
                            }
                            if (_errs24 === errors) {
                              if (data12.part !== void 0) {
                                const _errs25 = errors;
                                if (typeof data12.part !== "string") {
                                  validate157.errors = [{ instancePath: instancePath + "/latch/part", schemaPath: "#/properties/latch/properties/part/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                  return false;
                                }
                                var valid6 = _errs25 === errors;
                              } else {
                                var valid6 = true;
                              }
                              if (valid6) {
                                if (data12.bars !== void 0) {
                                  let data14 = data12.bars;
                                  const _errs27 = errors;
                                  if (errors === _errs27) {
                                    if (Array.isArray(data14)) {
                                      if (data14.length > 2) {
                                        validate157.errors = [{ instancePath: instancePath + "/latch/bars", schemaPath: "#/properties/latch/properties/bars/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" }];
                                        return false;
                                      } else {
                                        if (data14.length < 2) {
                                          validate157.errors = [{ instancePath: instancePath + "/latch/bars", schemaPath: "#/properties/latch/properties/bars/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" }];
                                          return false;
                                        } else {
                                          var valid7 = true;
                                          const len4 = data14.length;
                                          for (let i4 = 0; i4 < len4; i4++) {
                                            const _errs30 = errors;
                                            if (!validate116(data14[i4], { instancePath: instancePath + "/latch/bars/" + i4, parentData: data14, parentDataProperty: i4, rootData, dynamicAnchors })) {
                                              vErrors = vErrors === null ? validate116.errors : vErrors.concat(validate116.errors);
                                              errors = vErrors.length;
                                            }
                                            var valid7 = _errs30 === errors;
                                            if (!valid7) {
                                              break;
                                            }
                                          }
                                        }
                                      }
                                    } else {
                                      validate157.errors = [{ instancePath: instancePath + "/latch/bars", schemaPath: "#/properties/latch/properties/bars/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                      return false;
                                    }
                                  }
                                  var valid6 = _errs27 === errors;
                                } else {
                                  var valid6 = true;
                                }
                                if (valid6) {
                                  if (data12.at !== void 0) {
                                    const _errs31 = errors;
                                    if (!validate86(data12.at, { instancePath: instancePath + "/latch/at", parentData: data12, parentDataProperty: "at", rootData, dynamicAnchors })) {
                                      vErrors = vErrors === null ? validate86.errors : vErrors.concat(validate86.errors);
                                      errors = vErrors.length;
                                    }
                                    var valid6 = _errs31 === errors;
                                  } else {
                                    var valid6 = true;
                                  }
                                }
                              }
                            }
                          }
                        } else {
                          validate157.errors = [{ instancePath: instancePath + "/latch", schemaPath: "#/properties/latch/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                          return false;
                        }
                      }
                      var valid0 = _errs22 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.swing !== void 0) {
                        let data17 = data.swing;
                        const _errs32 = errors;
                        if (errors === _errs32) {
                          if (Array.isArray(data17)) {
                            if (data17.length > 2) {
                              validate157.errors = [{ instancePath: instancePath + "/swing", schemaPath: "#/properties/swing/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" }];
                              return false;
                            } else {
                              if (data17.length < 2) {
                                validate157.errors = [{ instancePath: instancePath + "/swing", schemaPath: "#/properties/swing/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" }];
                                return false;
                              } else {
                                var valid8 = true;
                                const len5 = data17.length;
                                for (let i5 = 0; i5 < len5; i5++) {
                                  const _errs35 = errors;
                                  if (!validate96(data17[i5], { instancePath: instancePath + "/swing/" + i5, parentData: data17, parentDataProperty: i5, rootData, dynamicAnchors })) {
                                    vErrors = vErrors === null ? validate96.errors : vErrors.concat(validate96.errors);
                                    errors = vErrors.length;
                                  }
                                  var valid8 = _errs35 === errors;
                                  if (!valid8) {
                                    break;
                                  }
                                }
                              }
                            }
                          } else {
                            validate157.errors = [{ instancePath: instancePath + "/swing", schemaPath: "#/properties/swing/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                            return false;
                          }
                        }
                        var valid0 = _errs32 === errors;
                      } else {
                        var valid0 = true;
                      }
                    }
                  }
                }
              }
            }
          }
        }
      }
    } else {
      validate157.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate157.errors = vErrors;
  return errors === 0;
}
validate157.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var schema49 = { "type": "object", "required": ["part", "bars"], "additionalProperties": false, "description": "Feet or casters under bar ends.", "properties": { "id": { "$ref": "#/$defs/id", "description": "Only for a single stand; otherwise named after bar and end: leg-1.foot." }, "part": { "type": "string", "minLength": 1, "description": "A foot or caster of stock.", "examples": ["foot-40-M8"] }, "bars": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/ref" }, "description": 'One stand under each of these bars; "leg-1/from" names the end too.' }, "end": { "$ref": "#/$defs/end", "description": "Which end; the lower one when left out." }, "raise": { "$ref": "#/$defs/length", "description": "Height it is set to, floor to bar end." }, "hold": { "enum": ["rest", "anchored", "rolling"], "description": "rest on the floor (standard for feet), anchored to it, or to the wall or ceiling that the end looks at, or rolling (standard for casters)." }, "brake": { "type": "boolean", "description": "Whether the caster has its brake set in use." } } };
var schema50 = { "enum": ["from", "to"], "description": "One end of a bar: from or to, as its two points are named.", "examples": ["from"] };
function validate171(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate171.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (!(data === "from" || data === "to")) {
    validate171.errors = [{ instancePath, schemaPath: "#/enum", keyword: "enum", params: { allowedValues: schema50.enum }, message: "must be equal to one of the allowed values" }];
    return false;
  }
  validate171.errors = vErrors;
  return errors === 0;
}
validate171.evaluated = { "dynamicProps": false, "dynamicItems": false };
function validate168(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate168.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.part === void 0 && (missing0 = "part") || data.bars === void 0 && (missing0 = "bars")) {
        validate168.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "id" || key0 === "part" || key0 === "bars" || key0 === "end" || key0 === "raise" || key0 === "hold" || key0 === "brake")) {
            validate168.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.id !== void 0) {
            const _errs2 = errors;
            if (!validate71(data.id, { instancePath: instancePath + "/id", parentData: data, parentDataProperty: "id", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate71.errors : vErrors.concat(validate71.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.part !== void 0) {
              let data1 = data.part;
              const _errs3 = errors;
              if (errors === _errs3) {
                if (typeof data1 === "string") {
                  if (func2(data1) < 1) {
                    validate168.errors = [{ instancePath: instancePath + "/part", schemaPath: "#/properties/part/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
                    return false;
                  }
                } else {
                  validate168.errors = [{ instancePath: instancePath + "/part", schemaPath: "#/properties/part/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                  return false;
                }
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.bars !== void 0) {
                let data2 = data.bars;
                const _errs5 = errors;
                if (errors === _errs5) {
                  if (Array.isArray(data2)) {
                    if (data2.length < 1) {
                      validate168.errors = [{ instancePath: instancePath + "/bars", schemaPath: "#/properties/bars/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" }];
                      return false;
                    } else {
                      var valid1 = true;
                      const len0 = data2.length;
                      for (let i0 = 0; i0 < len0; i0++) {
                        const _errs7 = errors;
                        if (!validate116(data2[i0], { instancePath: instancePath + "/bars/" + i0, parentData: data2, parentDataProperty: i0, rootData, dynamicAnchors })) {
                          vErrors = vErrors === null ? validate116.errors : vErrors.concat(validate116.errors);
                          errors = vErrors.length;
                        }
                        var valid1 = _errs7 === errors;
                        if (!valid1) {
                          break;
                        }
                      }
                    }
                  } else {
                    validate168.errors = [{ instancePath: instancePath + "/bars", schemaPath: "#/properties/bars/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                    return false;
                  }
                }
                var valid0 = _errs5 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.end !== void 0) {
                  const _errs8 = errors;
                  if (!validate171(data.end, { instancePath: instancePath + "/end", parentData: data, parentDataProperty: "end", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate171.errors : vErrors.concat(validate171.errors);
                    errors = vErrors.length;
                  }
                  var valid0 = _errs8 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.raise !== void 0) {
                    const _errs9 = errors;
                    if (!validate63(data.raise, { instancePath: instancePath + "/raise", parentData: data, parentDataProperty: "raise", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate63.errors : vErrors.concat(validate63.errors);
                      errors = vErrors.length;
                    }
                    var valid0 = _errs9 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.hold !== void 0) {
                      let data6 = data.hold;
                      const _errs10 = errors;
                      if (!(data6 === "rest" || data6 === "anchored" || data6 === "rolling")) {
                        validate168.errors = [{ instancePath: instancePath + "/hold", schemaPath: "#/properties/hold/enum", keyword: "enum", params: { allowedValues: schema49.properties.hold.enum }, message: "must be equal to one of the allowed values" }];
                        return false;
                      }
                      var valid0 = _errs10 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.brake !== void 0) {
                        const _errs11 = errors;
                        if (typeof data.brake !== "boolean") {
                          validate168.errors = [{ instancePath: instancePath + "/brake", schemaPath: "#/properties/brake/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" }];
                          return false;
                        }
                        var valid0 = _errs11 === errors;
                      } else {
                        var valid0 = true;
                      }
                    }
                  }
                }
              }
            }
          }
        }
      }
    } else {
      validate168.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate168.errors = vErrors;
  return errors === 0;
}
validate168.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var schema51 = { "type": "object", "required": ["id", "mass", "centre", "on"], "additionalProperties": false, "description": "A thing of weight.", "properties": { "id": { "$ref": "#/$defs/id" }, "mass": { "$ref": "#/$defs/massValue" }, "centre": { "$ref": "#/$defs/point" }, "box": { "type": "array", "items": { "$ref": "#/$defs/length" }, "minItems": 3, "maxItems": 3, "tsType": "[Length, Length, Length]", "description": "Its size along x, y, z." }, "on": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/ref" }, "description": "The bars or panels that carry it." }, "fixed": { "type": "boolean", "description": "Bolted down (standard) or taken off in use." }, "rigid": { "type": "boolean", "description": "Stiff as a block: it stands on the two ends of its box on each bar instead of evenly along it; standard false." }, "shakes": { "$ref": "#/$defs/frequency", "description": "Frequency at which it shakes the frame." }, "slides": { "type": "object", "required": ["by"], "additionalProperties": false, "description": "A drawer, or what else is pulled out in use. The file draws it pushed in.", "properties": { "by": { "$ref": "#/$defs/point", "description": "How far and which way its centre comes out, [x, y, z].", "examples": [[0, -450, 0]] }, "interlock": { "type": "boolean", "description": "An interlock keeps the others in while it is out (standard); false: all that say so come out together." } } } } };
var schema52 = { "type": ["number", "string"], "maxLength": 64, "description": "A mass: a number in kg (or lb), or a string with its unit.", "x-quantity": "mass", "examples": [35, "80 lb"] };
function validate177(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate177.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (!(typeof data == "number" && isFinite(data)) && typeof data !== "string") {
    validate177.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: schema52.type }, message: "must be number,string" }];
    return false;
  }
  if (errors === 0) {
    if (typeof data === "string") {
      if (func2(data) > 64) {
        validate177.errors = [{ instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" }];
        return false;
      }
    }
  }
  validate177.errors = vErrors;
  return errors === 0;
}
validate177.evaluated = { "dynamicProps": false, "dynamicItems": false };
var schema53 = { "type": ["number", "string"], "maxLength": 64, "description": "A frequency: a number in Hz, or a string with its unit.", "x-quantity": "frequency", "examples": [25] };
function validate182(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate182.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (!(typeof data == "number" && isFinite(data)) && typeof data !== "string") {
    validate182.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: schema53.type }, message: "must be number,string" }];
    return false;
  }
  if (errors === 0) {
    if (typeof data === "string") {
      if (func2(data) > 64) {
        validate182.errors = [{ instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" }];
        return false;
      }
    }
  }
  validate182.errors = vErrors;
  return errors === 0;
}
validate182.evaluated = { "dynamicProps": false, "dynamicItems": false };
function validate175(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate175.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.id === void 0 && (missing0 = "id") || data.mass === void 0 && (missing0 = "mass") || data.centre === void 0 && (missing0 = "centre") || data.on === void 0 && (missing0 = "on")) {
        validate175.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!func1.call(schema51.properties, key0)) {
            validate175.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.id !== void 0) {
            const _errs2 = errors;
            if (!validate71(data.id, { instancePath: instancePath + "/id", parentData: data, parentDataProperty: "id", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate71.errors : vErrors.concat(validate71.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.mass !== void 0) {
              const _errs3 = errors;
              if (!validate177(data.mass, { instancePath: instancePath + "/mass", parentData: data, parentDataProperty: "mass", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate177.errors : vErrors.concat(validate177.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.centre !== void 0) {
                const _errs4 = errors;
                if (!validate86(data.centre, { instancePath: instancePath + "/centre", parentData: data, parentDataProperty: "centre", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate86.errors : vErrors.concat(validate86.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs4 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.box !== void 0) {
                  let data3 = data.box;
                  const _errs5 = errors;
                  if (errors === _errs5) {
                    if (Array.isArray(data3)) {
                      if (data3.length > 3) {
                        validate175.errors = [{ instancePath: instancePath + "/box", schemaPath: "#/properties/box/maxItems", keyword: "maxItems", params: { limit: 3 }, message: "must NOT have more than 3 items" }];
                        return false;
                      } else {
                        if (data3.length < 3) {
                          validate175.errors = [{ instancePath: instancePath + "/box", schemaPath: "#/properties/box/minItems", keyword: "minItems", params: { limit: 3 }, message: "must NOT have fewer than 3 items" }];
                          return false;
                        } else {
                          var valid1 = true;
                          const len0 = data3.length;
                          for (let i0 = 0; i0 < len0; i0++) {
                            const _errs8 = errors;
                            if (!validate63(data3[i0], { instancePath: instancePath + "/box/" + i0, parentData: data3, parentDataProperty: i0, rootData, dynamicAnchors })) {
                              vErrors = vErrors === null ? validate63.errors : vErrors.concat(validate63.errors);
                              errors = vErrors.length;
                            }
                            var valid1 = _errs8 === errors;
                            if (!valid1) {
                              break;
                            }
                          }
                        }
                      }
                    } else {
                      validate175.errors = [{ instancePath: instancePath + "/box", schemaPath: "#/properties/box/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                      return false;
                    }
                  }
                  var valid0 = _errs5 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.on !== void 0) {
                    let data5 = data.on;
                    const _errs9 = errors;
                    if (errors === _errs9) {
                      if (Array.isArray(data5)) {
                        if (data5.length < 1) {
                          validate175.errors = [{ instancePath: instancePath + "/on", schemaPath: "#/properties/on/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" }];
                          return false;
                        } else {
                          var valid2 = true;
                          const len1 = data5.length;
                          for (let i1 = 0; i1 < len1; i1++) {
                            const _errs11 = errors;
                            if (!validate116(data5[i1], { instancePath: instancePath + "/on/" + i1, parentData: data5, parentDataProperty: i1, rootData, dynamicAnchors })) {
                              vErrors = vErrors === null ? validate116.errors : vErrors.concat(validate116.errors);
                              errors = vErrors.length;
                            }
                            var valid2 = _errs11 === errors;
                            if (!valid2) {
                              break;
                            }
                          }
                        }
                      } else {
                        validate175.errors = [{ instancePath: instancePath + "/on", schemaPath: "#/properties/on/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                        return false;
                      }
                    }
                    var valid0 = _errs9 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.fixed !== void 0) {
                      const _errs12 = errors;
                      if (typeof data.fixed !== "boolean") {
                        validate175.errors = [{ instancePath: instancePath + "/fixed", schemaPath: "#/properties/fixed/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" }];
                        return false;
                      }
                      var valid0 = _errs12 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.rigid !== void 0) {
                        const _errs14 = errors;
                        if (typeof data.rigid !== "boolean") {
                          validate175.errors = [{ instancePath: instancePath + "/rigid", schemaPath: "#/properties/rigid/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" }];
                          return false;
                        }
                        var valid0 = _errs14 === errors;
                      } else {
                        var valid0 = true;
                      }
                      if (valid0) {
                        if (data.shakes !== void 0) {
                          const _errs16 = errors;
                          if (!validate182(data.shakes, { instancePath: instancePath + "/shakes", parentData: data, parentDataProperty: "shakes", rootData, dynamicAnchors })) {
                            vErrors = vErrors === null ? validate182.errors : vErrors.concat(validate182.errors);
                            errors = vErrors.length;
                          }
                          var valid0 = _errs16 === errors;
                        } else {
                          var valid0 = true;
                        }
                        if (valid0) {
                          if (data.slides !== void 0) {
                            let data10 = data.slides;
                            const _errs17 = errors;
                            if (errors === _errs17) {
                              if (data10 && typeof data10 == "object" && !Array.isArray(data10)) {
                                let missing1;
                                if (data10.by === void 0 && (missing1 = "by")) {
                                  validate175.errors = [{ instancePath: instancePath + "/slides", schemaPath: "#/properties/slides/required", keyword: "required", params: { missingProperty: missing1 }, message: "must have required property '" + missing1 + "'" }];
                                  return false;
                                } else {
                                  const _errs19 = errors;
                                  for (const key1 in data10) {
                                    if (!(key1 === "by" || key1 === "interlock")) {
                                      validate175.errors = [{ instancePath: instancePath + "/slides", schemaPath: "#/properties/slides/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties" }];
                                      return false;
                                      break;
                                    }
                                  }
                                  if (_errs19 === errors) {
                                    if (data10.by !== void 0) {
                                      const _errs20 = errors;
                                      if (!validate86(data10.by, { instancePath: instancePath + "/slides/by", parentData: data10, parentDataProperty: "by", rootData, dynamicAnchors })) {
                                        vErrors = vErrors === null ? validate86.errors : vErrors.concat(validate86.errors);
                                        errors = vErrors.length;
                                      }
                                      var valid3 = _errs20 === errors;
                                    } else {
                                      var valid3 = true;
                                    }
                                    if (valid3) {
                                      if (data10.interlock !== void 0) {
                                        const _errs21 = errors;
                                        if (typeof data10.interlock !== "boolean") {
                                          validate175.errors = [{ instancePath: instancePath + "/slides/interlock", schemaPath: "#/properties/slides/properties/interlock/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" }];
                                          return false;
                                        }
                                        var valid3 = _errs21 === errors;
                                      } else {
                                        var valid3 = true;
                                      }
                                    }
                                  }
                                }
                              } else {
                                validate175.errors = [{ instancePath: instancePath + "/slides", schemaPath: "#/properties/slides/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                                return false;
                              }
                            }
                            var valid0 = _errs17 === errors;
                          } else {
                            var valid0 = true;
                          }
                        }
                      }
                    }
                  }
                }
              }
            }
          }
        }
      }
    } else {
      validate175.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate175.errors = vErrors;
  return errors === 0;
}
validate175.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var schema54 = { "type": "object", "required": ["case", "on"], "additionalProperties": false, "description": "One load: give exactly one of force, line, pressure, moment.", "properties": { "id": { "$ref": "#/$defs/id" }, "case": { "$ref": "#/$defs/id", "description": "The load case it belongs to.", "examples": ["trays"] }, "on": { "anyOf": [{ "$ref": "#/$defs/ref" }, { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/ref" } }], "description": "The bar, panel or mass it acts on.", "x-expected": "the id of a part, or a list of ids" }, "force": { "$ref": "#/$defs/force", "description": "A force, for each part named; on a panel on 100 mm square in its middle." }, "line": { "$ref": "#/$defs/lineLoad", "description": "A force per length of bar." }, "pressure": { "$ref": "#/$defs/pressure", "description": "A pressure on a panel." }, "moment": { "$ref": "#/$defs/moment", "description": "A moment about direction." }, "direction": { "$ref": "#/$defs/direction", "description": "Where it points; standard -z." }, "at": { "anyOf": [{ "enum": ["middle", "worst"] }, { "$ref": "#/$defs/length" }], "description": "Where along a bar, from its from point; middle (standard), or worst: roaming to where it does most harm.", "x-expected": "middle, worst, or a length" }, "part": { "type": "array", "items": { "$ref": "#/$defs/length" }, "minItems": 2, "maxItems": 2, "tsType": "[Length, Length]", "description": "The part of the bar a line load covers; the whole bar when left out." }, "face": { "$ref": "#/$defs/face", "description": "The face it acts on; the centreline when left out." } }, "examples": [{ "case": "trays", "on": "top", "pressure": "1.5 kPa" }] };
var schema55 = { "type": ["number", "string"], "maxLength": 64, "description": "A force: a number in N (or lbf), or a string with its unit.", "x-quantity": "force", "examples": [250, "250 lbf"] };
function validate191(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate191.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (!(typeof data == "number" && isFinite(data)) && typeof data !== "string") {
    validate191.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: schema55.type }, message: "must be number,string" }];
    return false;
  }
  if (errors === 0) {
    if (typeof data === "string") {
      if (func2(data) > 64) {
        validate191.errors = [{ instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" }];
        return false;
      }
    }
  }
  validate191.errors = vErrors;
  return errors === 0;
}
validate191.evaluated = { "dynamicProps": false, "dynamicItems": false };
var schema56 = { "type": ["number", "string"], "maxLength": 64, "description": "A force per length: a number in N/mm (or lbf/in), or a string with its unit.", "x-quantity": "lineLoad", "examples": [0.5] };
function validate193(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate193.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (!(typeof data == "number" && isFinite(data)) && typeof data !== "string") {
    validate193.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: schema56.type }, message: "must be number,string" }];
    return false;
  }
  if (errors === 0) {
    if (typeof data === "string") {
      if (func2(data) > 64) {
        validate193.errors = [{ instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" }];
        return false;
      }
    }
  }
  validate193.errors = vErrors;
  return errors === 0;
}
validate193.evaluated = { "dynamicProps": false, "dynamicItems": false };
var schema57 = { "type": ["number", "string"], "maxLength": 64, "description": "A pressure: a number in kPa (or psi), or a string with its unit.", "x-quantity": "pressure", "examples": [1.5, "1.5 kPa"] };
function validate195(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate195.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (!(typeof data == "number" && isFinite(data)) && typeof data !== "string") {
    validate195.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: schema57.type }, message: "must be number,string" }];
    return false;
  }
  if (errors === 0) {
    if (typeof data === "string") {
      if (func2(data) > 64) {
        validate195.errors = [{ instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" }];
        return false;
      }
    }
  }
  validate195.errors = vErrors;
  return errors === 0;
}
validate195.evaluated = { "dynamicProps": false, "dynamicItems": false };
function validate186(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate186.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.case === void 0 && (missing0 = "case") || data.on === void 0 && (missing0 = "on")) {
        validate186.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!func1.call(schema54.properties, key0)) {
            validate186.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.id !== void 0) {
            const _errs2 = errors;
            if (!validate71(data.id, { instancePath: instancePath + "/id", parentData: data, parentDataProperty: "id", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate71.errors : vErrors.concat(validate71.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.case !== void 0) {
              const _errs3 = errors;
              if (!validate71(data.case, { instancePath: instancePath + "/case", parentData: data, parentDataProperty: "case", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate71.errors : vErrors.concat(validate71.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.on !== void 0) {
                let data2 = data.on;
                const _errs4 = errors;
                const _errs5 = errors;
                let valid1 = false;
                const _errs6 = errors;
                if (!validate116(data2, { instancePath: instancePath + "/on", parentData: data, parentDataProperty: "on", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate116.errors : vErrors.concat(validate116.errors);
                  errors = vErrors.length;
                }
                var _valid0 = _errs6 === errors;
                valid1 = valid1 || _valid0;
                const _errs7 = errors;
                if (errors === _errs7) {
                  if (Array.isArray(data2)) {
                    if (data2.length < 1) {
                      const err0 = { instancePath: instancePath + "/on", schemaPath: "#/properties/on/anyOf/1/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
                      if (vErrors === null) {
                        vErrors = [err0];
                      } else {
                        vErrors.push(err0);
                      }
                      errors++;
                    } else {
                      var valid2 = true;
                      const len0 = data2.length;
                      for (let i0 = 0; i0 < len0; i0++) {
                        const _errs9 = errors;
                        if (!validate116(data2[i0], { instancePath: instancePath + "/on/" + i0, parentData: data2, parentDataProperty: i0, rootData, dynamicAnchors })) {
                          vErrors = vErrors === null ? validate116.errors : vErrors.concat(validate116.errors);
                          errors = vErrors.length;
                        }
                        var valid2 = _errs9 === errors;
                        if (!valid2) {
                          break;
                        }
                      }
                    }
                  } else {
                    const err1 = { instancePath: instancePath + "/on", schemaPath: "#/properties/on/anyOf/1/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                    if (vErrors === null) {
                      vErrors = [err1];
                    } else {
                      vErrors.push(err1);
                    }
                    errors++;
                  }
                }
                var _valid0 = _errs7 === errors;
                valid1 = valid1 || _valid0;
                if (!valid1) {
                  const err2 = { instancePath: instancePath + "/on", schemaPath: "#/properties/on/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err2];
                  } else {
                    vErrors.push(err2);
                  }
                  errors++;
                  validate186.errors = vErrors;
                  return false;
                } else {
                  errors = _errs5;
                  if (vErrors !== null) {
                    if (_errs5) {
                      vErrors.length = _errs5;
                    } else {
                      vErrors = null;
                    }
                  }
                }
                var valid0 = _errs4 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.force !== void 0) {
                  const _errs11 = errors;
                  if (!validate191(data.force, { instancePath: instancePath + "/force", parentData: data, parentDataProperty: "force", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate191.errors : vErrors.concat(validate191.errors);
                    errors = vErrors.length;
                  }
                  var valid0 = _errs11 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.line !== void 0) {
                    const _errs12 = errors;
                    if (!validate193(data.line, { instancePath: instancePath + "/line", parentData: data, parentDataProperty: "line", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate193.errors : vErrors.concat(validate193.errors);
                      errors = vErrors.length;
                    }
                    var valid0 = _errs12 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.pressure !== void 0) {
                      const _errs13 = errors;
                      if (!validate195(data.pressure, { instancePath: instancePath + "/pressure", parentData: data, parentDataProperty: "pressure", rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate195.errors : vErrors.concat(validate195.errors);
                        errors = vErrors.length;
                      }
                      var valid0 = _errs13 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.moment !== void 0) {
                        const _errs14 = errors;
                        if (!validate54(data.moment, { instancePath: instancePath + "/moment", parentData: data, parentDataProperty: "moment", rootData, dynamicAnchors })) {
                          vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
                          errors = vErrors.length;
                        }
                        var valid0 = _errs14 === errors;
                      } else {
                        var valid0 = true;
                      }
                      if (valid0) {
                        if (data.direction !== void 0) {
                          const _errs15 = errors;
                          if (!validate92(data.direction, { instancePath: instancePath + "/direction", parentData: data, parentDataProperty: "direction", rootData, dynamicAnchors })) {
                            vErrors = vErrors === null ? validate92.errors : vErrors.concat(validate92.errors);
                            errors = vErrors.length;
                          }
                          var valid0 = _errs15 === errors;
                        } else {
                          var valid0 = true;
                        }
                        if (valid0) {
                          if (data.at !== void 0) {
                            let data9 = data.at;
                            const _errs16 = errors;
                            const _errs17 = errors;
                            let valid3 = false;
                            const _errs18 = errors;
                            if (!(data9 === "middle" || data9 === "worst")) {
                              const err3 = { instancePath: instancePath + "/at", schemaPath: "#/properties/at/anyOf/0/enum", keyword: "enum", params: { allowedValues: schema54.properties.at.anyOf[0].enum }, message: "must be equal to one of the allowed values" };
                              if (vErrors === null) {
                                vErrors = [err3];
                              } else {
                                vErrors.push(err3);
                              }
                              errors++;
                            }
                            var _valid1 = _errs18 === errors;
                            valid3 = valid3 || _valid1;
                            const _errs19 = errors;
                            if (!validate63(data9, { instancePath: instancePath + "/at", parentData: data, parentDataProperty: "at", rootData, dynamicAnchors })) {
                              vErrors = vErrors === null ? validate63.errors : vErrors.concat(validate63.errors);
                              errors = vErrors.length;
                            }
                            var _valid1 = _errs19 === errors;
                            valid3 = valid3 || _valid1;
                            if (!valid3) {
                              const err4 = { instancePath: instancePath + "/at", schemaPath: "#/properties/at/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                              if (vErrors === null) {
                                vErrors = [err4];
                              } else {
                                vErrors.push(err4);
                              }
                              errors++;
                              validate186.errors = vErrors;
                              return false;
                            } else {
                              errors = _errs17;
                              if (vErrors !== null) {
                                if (_errs17) {
                                  vErrors.length = _errs17;
                                } else {
                                  vErrors = null;
                                }
                              }
                            }
                            var valid0 = _errs16 === errors;
                          } else {
                            var valid0 = true;
                          }
                          if (valid0) {
                            if (data.part !== void 0) {
                              let data10 = data.part;
                              const _errs21 = errors;
                              if (errors === _errs21) {
                                if (Array.isArray(data10)) {
                                  if (data10.length > 2) {
                                    validate186.errors = [{ instancePath: instancePath + "/part", schemaPath: "#/properties/part/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" }];
                                    return false;
                                  } else {
                                    if (data10.length < 2) {
                                      validate186.errors = [{ instancePath: instancePath + "/part", schemaPath: "#/properties/part/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" }];
                                      return false;
                                    } else {
                                      var valid4 = true;
                                      const len1 = data10.length;
                                      for (let i1 = 0; i1 < len1; i1++) {
                                        const _errs24 = errors;
                                        if (!validate63(data10[i1], { instancePath: instancePath + "/part/" + i1, parentData: data10, parentDataProperty: i1, rootData, dynamicAnchors })) {
                                          vErrors = vErrors === null ? validate63.errors : vErrors.concat(validate63.errors);
                                          errors = vErrors.length;
                                        }
                                        var valid4 = _errs24 === errors;
                                        if (!valid4) {
                                          break;
                                        }
                                      }
                                    }
                                  }
                                } else {
                                  validate186.errors = [{ instancePath: instancePath + "/part", schemaPath: "#/properties/part/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                  return false;
                                }
                              }
                              var valid0 = _errs21 === errors;
                            } else {
                              var valid0 = true;
                            }
                            if (valid0) {
                              if (data.face !== void 0) {
                                const _errs25 = errors;
                                if (!validate75(data.face, { instancePath: instancePath + "/face", parentData: data, parentDataProperty: "face", rootData, dynamicAnchors })) {
                                  vErrors = vErrors === null ? validate75.errors : vErrors.concat(validate75.errors);
                                  errors = vErrors.length;
                                }
                                var valid0 = _errs25 === errors;
                              } else {
                                var valid0 = true;
                              }
                            }
                          }
                        }
                      }
                    }
                  }
                }
              }
            }
          }
        }
      }
    } else {
      validate186.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate186.errors = vErrors;
  return errors === 0;
}
validate186.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var schema58 = { "type": "object", "required": ["id"], "additionalProperties": false, "description": "A load case.", "properties": { "id": { "$ref": "#/$defs/id" }, "kind": { "enum": ["permanent", "variable", "accidental"], "description": "Standard variable." }, "excludes": { "type": "array", "items": { "$ref": "#/$defs/id" }, "description": "Cases that never act together with this one; said of one of two, it holds for both." }, "about": { "type": "string", "description": "What the case stands for, in words." } } };
function validate203(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate203.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.id === void 0 && (missing0 = "id")) {
        validate203.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "id" || key0 === "kind" || key0 === "excludes" || key0 === "about")) {
            validate203.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.id !== void 0) {
            const _errs2 = errors;
            if (!validate71(data.id, { instancePath: instancePath + "/id", parentData: data, parentDataProperty: "id", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate71.errors : vErrors.concat(validate71.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.kind !== void 0) {
              let data1 = data.kind;
              const _errs3 = errors;
              if (!(data1 === "permanent" || data1 === "variable" || data1 === "accidental")) {
                validate203.errors = [{ instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/enum", keyword: "enum", params: { allowedValues: schema58.properties.kind.enum }, message: "must be equal to one of the allowed values" }];
                return false;
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.excludes !== void 0) {
                let data2 = data.excludes;
                const _errs4 = errors;
                if (errors === _errs4) {
                  if (Array.isArray(data2)) {
                    var valid1 = true;
                    const len0 = data2.length;
                    for (let i0 = 0; i0 < len0; i0++) {
                      const _errs6 = errors;
                      if (!validate71(data2[i0], { instancePath: instancePath + "/excludes/" + i0, parentData: data2, parentDataProperty: i0, rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate71.errors : vErrors.concat(validate71.errors);
                        errors = vErrors.length;
                      }
                      var valid1 = _errs6 === errors;
                      if (!valid1) {
                        break;
                      }
                    }
                  } else {
                    validate203.errors = [{ instancePath: instancePath + "/excludes", schemaPath: "#/properties/excludes/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                    return false;
                  }
                }
                var valid0 = _errs4 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.about !== void 0) {
                  const _errs7 = errors;
                  if (typeof data.about !== "string") {
                    validate203.errors = [{ instancePath: instancePath + "/about", schemaPath: "#/properties/about/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                    return false;
                  }
                  var valid0 = _errs7 === errors;
                } else {
                  var valid0 = true;
                }
              }
            }
          }
        }
      }
    } else {
      validate203.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate203.errors = vErrors;
  return errors === 0;
}
validate203.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
function validate207(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate207.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.id === void 0 && (missing0 = "id") || data.parts === void 0 && (missing0 = "parts")) {
        validate207.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "id" || key0 === "parts" || key0 === "built")) {
            validate207.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.id !== void 0) {
            const _errs2 = errors;
            if (!validate71(data.id, { instancePath: instancePath + "/id", parentData: data, parentDataProperty: "id", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate71.errors : vErrors.concat(validate71.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.parts !== void 0) {
              let data1 = data.parts;
              const _errs3 = errors;
              if (errors === _errs3) {
                if (Array.isArray(data1)) {
                  if (data1.length < 1) {
                    validate207.errors = [{ instancePath: instancePath + "/parts", schemaPath: "#/properties/parts/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" }];
                    return false;
                  } else {
                    var valid1 = true;
                    const len0 = data1.length;
                    for (let i0 = 0; i0 < len0; i0++) {
                      const _errs5 = errors;
                      if (!validate116(data1[i0], { instancePath: instancePath + "/parts/" + i0, parentData: data1, parentDataProperty: i0, rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate116.errors : vErrors.concat(validate116.errors);
                        errors = vErrors.length;
                      }
                      var valid1 = _errs5 === errors;
                      if (!valid1) {
                        break;
                      }
                    }
                  }
                } else {
                  validate207.errors = [{ instancePath: instancePath + "/parts", schemaPath: "#/properties/parts/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                  return false;
                }
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.built !== void 0) {
                const _errs6 = errors;
                if (typeof data.built !== "boolean") {
                  validate207.errors = [{ instancePath: instancePath + "/built", schemaPath: "#/properties/built/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" }];
                  return false;
                }
                var valid0 = _errs6 === errors;
              } else {
                var valid0 = true;
              }
            }
          }
        }
      }
    } else {
      validate207.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate207.errors = vErrors;
  return errors === 0;
}
validate207.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var schema60 = { "type": "object", "required": ["id", "box", "risk"], "additionalProperties": false, "description": "A volume that hurts.", "properties": { "id": { "$ref": "#/$defs/id" }, "box": { "type": "array", "items": { "$ref": "#/$defs/point" }, "minItems": 2, "maxItems": 2, "tsType": "[Point, Point]", "description": "Two opposite corners." }, "risk": { "enum": ["low", "high"], "description": "How badly a person can be hurt in it." } } };
function validate211(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate211.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.id === void 0 && (missing0 = "id") || data.box === void 0 && (missing0 = "box") || data.risk === void 0 && (missing0 = "risk")) {
        validate211.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "id" || key0 === "box" || key0 === "risk")) {
            validate211.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.id !== void 0) {
            const _errs2 = errors;
            if (!validate71(data.id, { instancePath: instancePath + "/id", parentData: data, parentDataProperty: "id", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate71.errors : vErrors.concat(validate71.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.box !== void 0) {
              let data1 = data.box;
              const _errs3 = errors;
              if (errors === _errs3) {
                if (Array.isArray(data1)) {
                  if (data1.length > 2) {
                    validate211.errors = [{ instancePath: instancePath + "/box", schemaPath: "#/properties/box/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" }];
                    return false;
                  } else {
                    if (data1.length < 2) {
                      validate211.errors = [{ instancePath: instancePath + "/box", schemaPath: "#/properties/box/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" }];
                      return false;
                    } else {
                      var valid1 = true;
                      const len0 = data1.length;
                      for (let i0 = 0; i0 < len0; i0++) {
                        const _errs6 = errors;
                        if (!validate86(data1[i0], { instancePath: instancePath + "/box/" + i0, parentData: data1, parentDataProperty: i0, rootData, dynamicAnchors })) {
                          vErrors = vErrors === null ? validate86.errors : vErrors.concat(validate86.errors);
                          errors = vErrors.length;
                        }
                        var valid1 = _errs6 === errors;
                        if (!valid1) {
                          break;
                        }
                      }
                    }
                  }
                } else {
                  validate211.errors = [{ instancePath: instancePath + "/box", schemaPath: "#/properties/box/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                  return false;
                }
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.risk !== void 0) {
                let data3 = data.risk;
                const _errs7 = errors;
                if (!(data3 === "low" || data3 === "high")) {
                  validate211.errors = [{ instancePath: instancePath + "/risk", schemaPath: "#/properties/risk/enum", keyword: "enum", params: { allowedValues: schema60.properties.risk.enum }, message: "must be equal to one of the allowed values" }];
                  return false;
                }
                var valid0 = _errs7 === errors;
              } else {
                var valid0 = true;
              }
            }
          }
        }
      }
    } else {
      validate211.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate211.errors = vErrors;
  return errors === 0;
}
validate211.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var schema61 = { "type": "object", "required": ["of", "suffix"], "additionalProperties": false, "description": "Repeats parts; joints and stands of copied bars, and what needs only copied parts, are copied too. Exactly one of shift, mirror, turn.", "properties": { "of": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/ref" }, "description": "Bars, panels, masses, doors, groups or zones; also what an earlier entry made." }, "suffix": { "type": "string", "minLength": 1, "maxLength": 40, "pattern": "^[^\\s/.]+$", "description": "Added to the ids; with times, the number of the copy is added too." }, "shift": { "$ref": "#/$defs/point", "description": "How far each copy is moved on." }, "times": { "type": "integer", "minimum": 1, "maximum": 1e4, "description": "How many copies, each shifted or turned further; standard 1. Not with mirror." }, "mirror": { "type": "object", "description": "Each part is copied to the other side of a plane.", "required": ["across", "at"], "additionalProperties": false, "properties": { "across": { "enum": ["x", "y", "z"], "description": "The axis normal to the mirror." }, "at": { "$ref": "#/$defs/length", "description": "Where the mirror stands on that axis." } } }, "turn": { "type": "object", "description": "How far each copy is turned on.", "required": ["about", "through", "angle"], "additionalProperties": false, "properties": { "about": { "$ref": "#/$defs/direction", "description": "Direction of the axis." }, "through": { "$ref": "#/$defs/point", "description": "A point on the axis." }, "angle": { "$ref": "#/$defs/angle", "description": "Right-handed about the axis." } } } }, "examples": [{ "of": ["leg-1", "rail-1"], "mirror": { "across": "x", "at": 750 }, "suffix": "b" }] };
var pattern4 = new RegExp("^[^\\s/.]+$", "u");
function validate215(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate215.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.of === void 0 && (missing0 = "of") || data.suffix === void 0 && (missing0 = "suffix")) {
        validate215.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "of" || key0 === "suffix" || key0 === "shift" || key0 === "times" || key0 === "mirror" || key0 === "turn")) {
            validate215.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.of !== void 0) {
            let data0 = data.of;
            const _errs2 = errors;
            if (errors === _errs2) {
              if (Array.isArray(data0)) {
                if (data0.length < 1) {
                  validate215.errors = [{ instancePath: instancePath + "/of", schemaPath: "#/properties/of/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" }];
                  return false;
                } else {
                  var valid1 = true;
                  const len0 = data0.length;
                  for (let i0 = 0; i0 < len0; i0++) {
                    const _errs4 = errors;
                    if (!validate116(data0[i0], { instancePath: instancePath + "/of/" + i0, parentData: data0, parentDataProperty: i0, rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate116.errors : vErrors.concat(validate116.errors);
                      errors = vErrors.length;
                    }
                    var valid1 = _errs4 === errors;
                    if (!valid1) {
                      break;
                    }
                  }
                }
              } else {
                validate215.errors = [{ instancePath: instancePath + "/of", schemaPath: "#/properties/of/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                return false;
              }
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.suffix !== void 0) {
              let data2 = data.suffix;
              const _errs5 = errors;
              if (errors === _errs5) {
                if (typeof data2 === "string") {
                  if (func2(data2) > 40) {
                    validate215.errors = [{ instancePath: instancePath + "/suffix", schemaPath: "#/properties/suffix/maxLength", keyword: "maxLength", params: { limit: 40 }, message: "must NOT have more than 40 characters" }];
                    return false;
                  } else {
                    if (func2(data2) < 1) {
                      validate215.errors = [{ instancePath: instancePath + "/suffix", schemaPath: "#/properties/suffix/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
                      return false;
                    } else {
                      if (!pattern4.test(data2)) {
                        validate215.errors = [{ instancePath: instancePath + "/suffix", schemaPath: "#/properties/suffix/pattern", keyword: "pattern", params: { pattern: "^[^\\s/.]+$" }, message: 'must match pattern "^[^\\s/.]+$"' }];
                        return false;
                      }
                    }
                  }
                } else {
                  validate215.errors = [{ instancePath: instancePath + "/suffix", schemaPath: "#/properties/suffix/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                  return false;
                }
              }
              var valid0 = _errs5 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.shift !== void 0) {
                const _errs7 = errors;
                if (!validate86(data.shift, { instancePath: instancePath + "/shift", parentData: data, parentDataProperty: "shift", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate86.errors : vErrors.concat(validate86.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs7 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.times !== void 0) {
                  let data4 = data.times;
                  const _errs8 = errors;
                  if (!(typeof data4 == "number" && (!(data4 % 1) && !isNaN(data4)) && isFinite(data4))) {
                    validate215.errors = [{ instancePath: instancePath + "/times", schemaPath: "#/properties/times/type", keyword: "type", params: { type: "integer" }, message: "must be integer" }];
                    return false;
                  }
                  if (errors === _errs8) {
                    if (typeof data4 == "number" && isFinite(data4)) {
                      if (data4 > 1e4 || isNaN(data4)) {
                        validate215.errors = [{ instancePath: instancePath + "/times", schemaPath: "#/properties/times/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e4 }, message: "must be <= 10000" }];
                        return false;
                      } else {
                        if (data4 < 1 || isNaN(data4)) {
                          validate215.errors = [{ instancePath: instancePath + "/times", schemaPath: "#/properties/times/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" }];
                          return false;
                        }
                      }
                    }
                  }
                  var valid0 = _errs8 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.mirror !== void 0) {
                    let data5 = data.mirror;
                    const _errs10 = errors;
                    if (errors === _errs10) {
                      if (data5 && typeof data5 == "object" && !Array.isArray(data5)) {
                        let missing1;
                        if (data5.across === void 0 && (missing1 = "across") || data5.at === void 0 && (missing1 = "at")) {
                          validate215.errors = [{ instancePath: instancePath + "/mirror", schemaPath: "#/properties/mirror/required", keyword: "required", params: { missingProperty: missing1 }, message: "must have required property '" + missing1 + "'" }];
                          return false;
                        } else {
                          const _errs12 = errors;
                          for (const key1 in data5) {
                            if (!(key1 === "across" || key1 === "at")) {
                              validate215.errors = [{ instancePath: instancePath + "/mirror", schemaPath: "#/properties/mirror/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties" }];
                              return false;
                              break;
                            }
                          }
                          if (_errs12 === errors) {
                            if (data5.across !== void 0) {
                              let data6 = data5.across;
                              const _errs13 = errors;
                              if (!(data6 === "x" || data6 === "y" || data6 === "z")) {
                                validate215.errors = [{ instancePath: instancePath + "/mirror/across", schemaPath: "#/properties/mirror/properties/across/enum", keyword: "enum", params: { allowedValues: schema61.properties.mirror.properties.across.enum }, message: "must be equal to one of the allowed values" }];
                                return false;
                              }
                              var valid2 = _errs13 === errors;
                            } else {
                              var valid2 = true;
                            }
                            if (valid2) {
                              if (data5.at !== void 0) {
                                const _errs14 = errors;
                                if (!validate63(data5.at, { instancePath: instancePath + "/mirror/at", parentData: data5, parentDataProperty: "at", rootData, dynamicAnchors })) {
                                  vErrors = vErrors === null ? validate63.errors : vErrors.concat(validate63.errors);
                                  errors = vErrors.length;
                                }
                                var valid2 = _errs14 === errors;
                              } else {
                                var valid2 = true;
                              }
                            }
                          }
                        }
                      } else {
                        validate215.errors = [{ instancePath: instancePath + "/mirror", schemaPath: "#/properties/mirror/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                        return false;
                      }
                    }
                    var valid0 = _errs10 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.turn !== void 0) {
                      let data8 = data.turn;
                      const _errs15 = errors;
                      if (errors === _errs15) {
                        if (data8 && typeof data8 == "object" && !Array.isArray(data8)) {
                          let missing2;
                          if (data8.about === void 0 && (missing2 = "about") || data8.through === void 0 && (missing2 = "through") || data8.angle === void 0 && (missing2 = "angle")) {
                            validate215.errors = [{ instancePath: instancePath + "/turn", schemaPath: "#/properties/turn/required", keyword: "required", params: { missingProperty: missing2 }, message: "must have required property '" + missing2 + "'" }];
                            return false;
                          } else {
                            const _errs17 = errors;
                            for (const key2 in data8) {
                              if (!(key2 === "about" || key2 === "through" || key2 === "angle")) {
                                validate215.errors = [{ instancePath: instancePath + "/turn", schemaPath: "#/properties/turn/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key2 }, message: "must NOT have additional properties" }];
                                return false;
                                break;
                              }
                            }
                            if (_errs17 === errors) {
                              if (data8.about !== void 0) {
                                const _errs18 = errors;
                                if (!validate92(data8.about, { instancePath: instancePath + "/turn/about", parentData: data8, parentDataProperty: "about", rootData, dynamicAnchors })) {
                                  vErrors = vErrors === null ? validate92.errors : vErrors.concat(validate92.errors);
                                  errors = vErrors.length;
                                }
                                var valid3 = _errs18 === errors;
                              } else {
                                var valid3 = true;
                              }
                              if (valid3) {
                                if (data8.through !== void 0) {
                                  const _errs19 = errors;
                                  if (!validate86(data8.through, { instancePath: instancePath + "/turn/through", parentData: data8, parentDataProperty: "through", rootData, dynamicAnchors })) {
                                    vErrors = vErrors === null ? validate86.errors : vErrors.concat(validate86.errors);
                                    errors = vErrors.length;
                                  }
                                  var valid3 = _errs19 === errors;
                                } else {
                                  var valid3 = true;
                                }
                                if (valid3) {
                                  if (data8.angle !== void 0) {
                                    const _errs20 = errors;
                                    if (!validate96(data8.angle, { instancePath: instancePath + "/turn/angle", parentData: data8, parentDataProperty: "angle", rootData, dynamicAnchors })) {
                                      vErrors = vErrors === null ? validate96.errors : vErrors.concat(validate96.errors);
                                      errors = vErrors.length;
                                    }
                                    var valid3 = _errs20 === errors;
                                  } else {
                                    var valid3 = true;
                                  }
                                }
                              }
                            }
                          }
                        } else {
                          validate215.errors = [{ instancePath: instancePath + "/turn", schemaPath: "#/properties/turn/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                          return false;
                        }
                      }
                      var valid0 = _errs15 === errors;
                    } else {
                      var valid0 = true;
                    }
                  }
                }
              }
            }
          }
        }
      }
    } else {
      validate215.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate215.errors = vErrors;
  return errors === 0;
}
validate215.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
function validate52(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  ;
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate52.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.format === void 0 && (missing0 = "format") || data.title === void 0 && (missing0 = "title") || data.units === void 0 && (missing0 = "units") || data.bars === void 0 && (missing0 = "bars")) {
        validate52.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!func1.call(schema19.properties, key0)) {
            validate52.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.$schema !== void 0) {
            const _errs2 = errors;
            if (typeof data.$schema !== "string") {
              validate52.errors = [{ instancePath: instancePath + "/$schema", schemaPath: "#/properties/%24schema/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
              return false;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.format !== void 0) {
              const _errs4 = errors;
              if (1 !== data.format) {
                validate52.errors = [{ instancePath: instancePath + "/format", schemaPath: "#/properties/format/const", keyword: "const", params: { allowedValue: 1 }, message: "must be equal to constant" }];
                return false;
              }
              var valid0 = _errs4 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.title !== void 0) {
                let data2 = data.title;
                const _errs5 = errors;
                if (errors === _errs5) {
                  if (typeof data2 === "string") {
                    if (func2(data2) > 200) {
                      validate52.errors = [{ instancePath: instancePath + "/title", schemaPath: "#/properties/title/maxLength", keyword: "maxLength", params: { limit: 200 }, message: "must NOT have more than 200 characters" }];
                      return false;
                    } else {
                      if (func2(data2) < 1) {
                        validate52.errors = [{ instancePath: instancePath + "/title", schemaPath: "#/properties/title/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
                        return false;
                      }
                    }
                  } else {
                    validate52.errors = [{ instancePath: instancePath + "/title", schemaPath: "#/properties/title/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                    return false;
                  }
                }
                var valid0 = _errs5 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.revision !== void 0) {
                  let data3 = data.revision;
                  const _errs7 = errors;
                  if (errors === _errs7) {
                    if (typeof data3 === "string") {
                      if (func2(data3) > 40) {
                        validate52.errors = [{ instancePath: instancePath + "/revision", schemaPath: "#/properties/revision/maxLength", keyword: "maxLength", params: { limit: 40 }, message: "must NOT have more than 40 characters" }];
                        return false;
                      }
                    } else {
                      validate52.errors = [{ instancePath: instancePath + "/revision", schemaPath: "#/properties/revision/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                      return false;
                    }
                  }
                  var valid0 = _errs7 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.notes !== void 0) {
                    let data4 = data.notes;
                    const _errs9 = errors;
                    const _errs10 = errors;
                    let valid1 = false;
                    const _errs11 = errors;
                    if (typeof data4 !== "string") {
                      const err0 = { instancePath: instancePath + "/notes", schemaPath: "#/properties/notes/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err0];
                      } else {
                        vErrors.push(err0);
                      }
                      errors++;
                    }
                    var _valid0 = _errs11 === errors;
                    valid1 = valid1 || _valid0;
                    const _errs13 = errors;
                    if (errors === _errs13) {
                      if (Array.isArray(data4)) {
                        var valid2 = true;
                        const len0 = data4.length;
                        for (let i0 = 0; i0 < len0; i0++) {
                          const _errs15 = errors;
                          if (typeof data4[i0] !== "string") {
                            const err1 = { instancePath: instancePath + "/notes/" + i0, schemaPath: "#/properties/notes/anyOf/1/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                            if (vErrors === null) {
                              vErrors = [err1];
                            } else {
                              vErrors.push(err1);
                            }
                            errors++;
                          }
                          var valid2 = _errs15 === errors;
                          if (!valid2) {
                            break;
                          }
                        }
                      } else {
                        const err2 = { instancePath: instancePath + "/notes", schemaPath: "#/properties/notes/anyOf/1/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                        if (vErrors === null) {
                          vErrors = [err2];
                        } else {
                          vErrors.push(err2);
                        }
                        errors++;
                      }
                    }
                    var _valid0 = _errs13 === errors;
                    valid1 = valid1 || _valid0;
                    if (!valid1) {
                      const err3 = { instancePath: instancePath + "/notes", schemaPath: "#/properties/notes/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                      if (vErrors === null) {
                        vErrors = [err3];
                      } else {
                        vErrors.push(err3);
                      }
                      errors++;
                      validate52.errors = vErrors;
                      return false;
                    } else {
                      errors = _errs10;
                      if (vErrors !== null) {
                        if (_errs10) {
                          vErrors.length = _errs10;
                        } else {
                          vErrors = null;
                        }
                      }
                    }
                    var valid0 = _errs9 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.units !== void 0) {
                      let data6 = data.units;
                      const _errs17 = errors;
                      if (!(data6 === "mm-N-kg" || data6 === "in-lbf-lb")) {
                        validate52.errors = [{ instancePath: instancePath + "/units", schemaPath: "#/properties/units/enum", keyword: "enum", params: { allowedValues: schema19.properties.units.enum }, message: "must be equal to one of the allowed values" }];
                        return false;
                      }
                      var valid0 = _errs17 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.stock !== void 0) {
                        let data7 = data.stock;
                        const _errs18 = errors;
                        if (errors === _errs18) {
                          if (Array.isArray(data7)) {
                            var valid3 = true;
                            const len1 = data7.length;
                            for (let i1 = 0; i1 < len1; i1++) {
                              let data8 = data7[i1];
                              const _errs20 = errors;
                              if (errors === _errs20) {
                                if (typeof data8 === "string") {
                                  if (func2(data8) < 1) {
                                    validate52.errors = [{ instancePath: instancePath + "/stock/" + i1, schemaPath: "#/properties/stock/items/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
                                    return false;
                                  }
                                } else {
                                  validate52.errors = [{ instancePath: instancePath + "/stock/" + i1, schemaPath: "#/properties/stock/items/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                  return false;
                                }
                              }
                              var valid3 = _errs20 === errors;
                              if (!valid3) {
                                break;
                              }
                            }
                          } else {
                            validate52.errors = [{ instancePath: instancePath + "/stock", schemaPath: "#/properties/stock/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                            return false;
                          }
                        }
                        var valid0 = _errs18 === errors;
                      } else {
                        var valid0 = true;
                      }
                      if (valid0) {
                        if (data.defaults !== void 0) {
                          const _errs22 = errors;
                          if (!validate53(data.defaults, { instancePath: instancePath + "/defaults", parentData: data, parentDataProperty: "defaults", rootData, dynamicAnchors })) {
                            vErrors = vErrors === null ? validate53.errors : vErrors.concat(validate53.errors);
                            errors = vErrors.length;
                          }
                          var valid0 = _errs22 === errors;
                        } else {
                          var valid0 = true;
                        }
                        if (valid0) {
                          if (data.site !== void 0) {
                            const _errs23 = errors;
                            if (!validate57(data.site, { instancePath: instancePath + "/site", parentData: data, parentDataProperty: "site", rootData, dynamicAnchors })) {
                              vErrors = vErrors === null ? validate57.errors : vErrors.concat(validate57.errors);
                              errors = vErrors.length;
                            }
                            var valid0 = _errs23 === errors;
                          } else {
                            var valid0 = true;
                          }
                          if (valid0) {
                            if (data.floor !== void 0) {
                              const _errs24 = errors;
                              if (!validate62(data.floor, { instancePath: instancePath + "/floor", parentData: data, parentDataProperty: "floor", rootData, dynamicAnchors })) {
                                vErrors = vErrors === null ? validate62.errors : vErrors.concat(validate62.errors);
                                errors = vErrors.length;
                              }
                              var valid0 = _errs24 === errors;
                            } else {
                              var valid0 = true;
                            }
                            if (valid0) {
                              if (data.method !== void 0) {
                                let data12 = data.method;
                                const _errs25 = errors;
                                if (!(data12 === "partial-factors" || data12 === "allowable-stress")) {
                                  validate52.errors = [{ instancePath: instancePath + "/method", schemaPath: "#/properties/method/enum", keyword: "enum", params: { allowedValues: schema19.properties.method.enum }, message: "must be equal to one of the allowed values" }];
                                  return false;
                                }
                                var valid0 = _errs25 === errors;
                              } else {
                                var valid0 = true;
                              }
                              if (valid0) {
                                if (data.criteria !== void 0) {
                                  const _errs27 = errors;
                                  if (!validate67(data.criteria, { instancePath: instancePath + "/criteria", parentData: data, parentDataProperty: "criteria", rootData, dynamicAnchors })) {
                                    vErrors = vErrors === null ? validate67.errors : vErrors.concat(validate67.errors);
                                    errors = vErrors.length;
                                  }
                                  var valid0 = _errs27 === errors;
                                } else {
                                  var valid0 = true;
                                }
                                if (valid0) {
                                  if (data.kits !== void 0) {
                                    let data14 = data.kits;
                                    const _errs28 = errors;
                                    if (errors === _errs28) {
                                      if (data14 && typeof data14 == "object" && !Array.isArray(data14)) {
                                        for (const key1 in data14) {
                                          const _errs30 = errors;
                                          if (!validate71(key1, { instancePath: instancePath + "/kits", parentData: data14, parentDataProperty: "kits", rootData, dynamicAnchors })) {
                                            vErrors = vErrors === null ? validate71.errors : vErrors.concat(validate71.errors);
                                            errors = vErrors.length;
                                          }
                                          var valid4 = _errs30 === errors;
                                          if (!valid4) {
                                            const err4 = { instancePath: instancePath + "/kits", schemaPath: "#/properties/kits/propertyNames", keyword: "propertyNames", params: { propertyName: key1 }, message: "property name must be valid" };
                                            if (vErrors === null) {
                                              vErrors = [err4];
                                            } else {
                                              vErrors.push(err4);
                                            }
                                            errors++;
                                            validate52.errors = vErrors;
                                            return false;
                                            break;
                                          }
                                        }
                                        if (valid4) {
                                          for (const key2 in data14) {
                                            const _errs32 = errors;
                                            if (!validate73(data14[key2], { instancePath: instancePath + "/kits/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"), parentData: data14, parentDataProperty: key2, rootData, dynamicAnchors })) {
                                              vErrors = vErrors === null ? validate73.errors : vErrors.concat(validate73.errors);
                                              errors = vErrors.length;
                                            }
                                            var valid5 = _errs32 === errors;
                                            if (!valid5) {
                                              break;
                                            }
                                          }
                                        }
                                      } else {
                                        validate52.errors = [{ instancePath: instancePath + "/kits", schemaPath: "#/properties/kits/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                                        return false;
                                      }
                                    }
                                    var valid0 = _errs28 === errors;
                                  } else {
                                    var valid0 = true;
                                  }
                                  if (valid0) {
                                    if (data.bars !== void 0) {
                                      let data16 = data.bars;
                                      const _errs33 = errors;
                                      if (errors === _errs33) {
                                        if (Array.isArray(data16)) {
                                          if (data16.length < 1) {
                                            validate52.errors = [{ instancePath: instancePath + "/bars", schemaPath: "#/properties/bars/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" }];
                                            return false;
                                          } else {
                                            var valid6 = true;
                                            const len2 = data16.length;
                                            for (let i2 = 0; i2 < len2; i2++) {
                                              const _errs35 = errors;
                                              if (!validate84(data16[i2], { instancePath: instancePath + "/bars/" + i2, parentData: data16, parentDataProperty: i2, rootData, dynamicAnchors })) {
                                                vErrors = vErrors === null ? validate84.errors : vErrors.concat(validate84.errors);
                                                errors = vErrors.length;
                                              }
                                              var valid6 = _errs35 === errors;
                                              if (!valid6) {
                                                break;
                                              }
                                            }
                                          }
                                        } else {
                                          validate52.errors = [{ instancePath: instancePath + "/bars", schemaPath: "#/properties/bars/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                          return false;
                                        }
                                      }
                                      var valid0 = _errs33 === errors;
                                    } else {
                                      var valid0 = true;
                                    }
                                    if (valid0) {
                                      if (data.joints !== void 0) {
                                        let data18 = data.joints;
                                        const _errs36 = errors;
                                        if (errors === _errs36) {
                                          if (Array.isArray(data18)) {
                                            var valid7 = true;
                                            const len3 = data18.length;
                                            for (let i3 = 0; i3 < len3; i3++) {
                                              const _errs38 = errors;
                                              if (!validate114(data18[i3], { instancePath: instancePath + "/joints/" + i3, parentData: data18, parentDataProperty: i3, rootData, dynamicAnchors })) {
                                                vErrors = vErrors === null ? validate114.errors : vErrors.concat(validate114.errors);
                                                errors = vErrors.length;
                                              }
                                              var valid7 = _errs38 === errors;
                                              if (!valid7) {
                                                break;
                                              }
                                            }
                                          } else {
                                            validate52.errors = [{ instancePath: instancePath + "/joints", schemaPath: "#/properties/joints/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                            return false;
                                          }
                                        }
                                        var valid0 = _errs36 === errors;
                                      } else {
                                        var valid0 = true;
                                      }
                                      if (valid0) {
                                        if (data.fastenings !== void 0) {
                                          let data20 = data.fastenings;
                                          const _errs39 = errors;
                                          if (errors === _errs39) {
                                            if (Array.isArray(data20)) {
                                              var valid8 = true;
                                              const len4 = data20.length;
                                              for (let i4 = 0; i4 < len4; i4++) {
                                                const _errs41 = errors;
                                                if (!validate123(data20[i4], { instancePath: instancePath + "/fastenings/" + i4, parentData: data20, parentDataProperty: i4, rootData, dynamicAnchors })) {
                                                  vErrors = vErrors === null ? validate123.errors : vErrors.concat(validate123.errors);
                                                  errors = vErrors.length;
                                                }
                                                var valid8 = _errs41 === errors;
                                                if (!valid8) {
                                                  break;
                                                }
                                              }
                                            } else {
                                              validate52.errors = [{ instancePath: instancePath + "/fastenings", schemaPath: "#/properties/fastenings/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                              return false;
                                            }
                                          }
                                          var valid0 = _errs39 === errors;
                                        } else {
                                          var valid0 = true;
                                        }
                                        if (valid0) {
                                          if (data.ties !== void 0) {
                                            let data22 = data.ties;
                                            const _errs42 = errors;
                                            if (errors === _errs42) {
                                              if (Array.isArray(data22)) {
                                                var valid9 = true;
                                                const len5 = data22.length;
                                                for (let i5 = 0; i5 < len5; i5++) {
                                                  const _errs44 = errors;
                                                  if (!validate132(data22[i5], { instancePath: instancePath + "/ties/" + i5, parentData: data22, parentDataProperty: i5, rootData, dynamicAnchors })) {
                                                    vErrors = vErrors === null ? validate132.errors : vErrors.concat(validate132.errors);
                                                    errors = vErrors.length;
                                                  }
                                                  var valid9 = _errs44 === errors;
                                                  if (!valid9) {
                                                    break;
                                                  }
                                                }
                                              } else {
                                                validate52.errors = [{ instancePath: instancePath + "/ties", schemaPath: "#/properties/ties/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                                return false;
                                              }
                                            }
                                            var valid0 = _errs42 === errors;
                                          } else {
                                            var valid0 = true;
                                          }
                                          if (valid0) {
                                            if (data.pivots !== void 0) {
                                              let data24 = data.pivots;
                                              const _errs45 = errors;
                                              if (errors === _errs45) {
                                                if (Array.isArray(data24)) {
                                                  var valid10 = true;
                                                  const len6 = data24.length;
                                                  for (let i6 = 0; i6 < len6; i6++) {
                                                    const _errs47 = errors;
                                                    if (!validate137(data24[i6], { instancePath: instancePath + "/pivots/" + i6, parentData: data24, parentDataProperty: i6, rootData, dynamicAnchors })) {
                                                      vErrors = vErrors === null ? validate137.errors : vErrors.concat(validate137.errors);
                                                      errors = vErrors.length;
                                                    }
                                                    var valid10 = _errs47 === errors;
                                                    if (!valid10) {
                                                      break;
                                                    }
                                                  }
                                                } else {
                                                  validate52.errors = [{ instancePath: instancePath + "/pivots", schemaPath: "#/properties/pivots/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                                  return false;
                                                }
                                              }
                                              var valid0 = _errs45 === errors;
                                            } else {
                                              var valid0 = true;
                                            }
                                            if (valid0) {
                                              if (data.panels !== void 0) {
                                                let data26 = data.panels;
                                                const _errs48 = errors;
                                                if (errors === _errs48) {
                                                  if (Array.isArray(data26)) {
                                                    var valid11 = true;
                                                    const len7 = data26.length;
                                                    for (let i7 = 0; i7 < len7; i7++) {
                                                      const _errs50 = errors;
                                                      if (!validate143(data26[i7], { instancePath: instancePath + "/panels/" + i7, parentData: data26, parentDataProperty: i7, rootData, dynamicAnchors })) {
                                                        vErrors = vErrors === null ? validate143.errors : vErrors.concat(validate143.errors);
                                                        errors = vErrors.length;
                                                      }
                                                      var valid11 = _errs50 === errors;
                                                      if (!valid11) {
                                                        break;
                                                      }
                                                    }
                                                  } else {
                                                    validate52.errors = [{ instancePath: instancePath + "/panels", schemaPath: "#/properties/panels/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                                    return false;
                                                  }
                                                }
                                                var valid0 = _errs48 === errors;
                                              } else {
                                                var valid0 = true;
                                              }
                                              if (valid0) {
                                                if (data.doors !== void 0) {
                                                  let data28 = data.doors;
                                                  const _errs51 = errors;
                                                  if (errors === _errs51) {
                                                    if (Array.isArray(data28)) {
                                                      var valid12 = true;
                                                      const len8 = data28.length;
                                                      for (let i8 = 0; i8 < len8; i8++) {
                                                        const _errs53 = errors;
                                                        if (!validate157(data28[i8], { instancePath: instancePath + "/doors/" + i8, parentData: data28, parentDataProperty: i8, rootData, dynamicAnchors })) {
                                                          vErrors = vErrors === null ? validate157.errors : vErrors.concat(validate157.errors);
                                                          errors = vErrors.length;
                                                        }
                                                        var valid12 = _errs53 === errors;
                                                        if (!valid12) {
                                                          break;
                                                        }
                                                      }
                                                    } else {
                                                      validate52.errors = [{ instancePath: instancePath + "/doors", schemaPath: "#/properties/doors/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                                      return false;
                                                    }
                                                  }
                                                  var valid0 = _errs51 === errors;
                                                } else {
                                                  var valid0 = true;
                                                }
                                                if (valid0) {
                                                  if (data.stands !== void 0) {
                                                    let data30 = data.stands;
                                                    const _errs54 = errors;
                                                    if (errors === _errs54) {
                                                      if (Array.isArray(data30)) {
                                                        var valid13 = true;
                                                        const len9 = data30.length;
                                                        for (let i9 = 0; i9 < len9; i9++) {
                                                          const _errs56 = errors;
                                                          if (!validate168(data30[i9], { instancePath: instancePath + "/stands/" + i9, parentData: data30, parentDataProperty: i9, rootData, dynamicAnchors })) {
                                                            vErrors = vErrors === null ? validate168.errors : vErrors.concat(validate168.errors);
                                                            errors = vErrors.length;
                                                          }
                                                          var valid13 = _errs56 === errors;
                                                          if (!valid13) {
                                                            break;
                                                          }
                                                        }
                                                      } else {
                                                        validate52.errors = [{ instancePath: instancePath + "/stands", schemaPath: "#/properties/stands/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                                        return false;
                                                      }
                                                    }
                                                    var valid0 = _errs54 === errors;
                                                  } else {
                                                    var valid0 = true;
                                                  }
                                                  if (valid0) {
                                                    if (data.masses !== void 0) {
                                                      let data32 = data.masses;
                                                      const _errs57 = errors;
                                                      if (errors === _errs57) {
                                                        if (Array.isArray(data32)) {
                                                          var valid14 = true;
                                                          const len10 = data32.length;
                                                          for (let i10 = 0; i10 < len10; i10++) {
                                                            const _errs59 = errors;
                                                            if (!validate175(data32[i10], { instancePath: instancePath + "/masses/" + i10, parentData: data32, parentDataProperty: i10, rootData, dynamicAnchors })) {
                                                              vErrors = vErrors === null ? validate175.errors : vErrors.concat(validate175.errors);
                                                              errors = vErrors.length;
                                                            }
                                                            var valid14 = _errs59 === errors;
                                                            if (!valid14) {
                                                              break;
                                                            }
                                                          }
                                                        } else {
                                                          validate52.errors = [{ instancePath: instancePath + "/masses", schemaPath: "#/properties/masses/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                                          return false;
                                                        }
                                                      }
                                                      var valid0 = _errs57 === errors;
                                                    } else {
                                                      var valid0 = true;
                                                    }
                                                    if (valid0) {
                                                      if (data.loads !== void 0) {
                                                        let data34 = data.loads;
                                                        const _errs60 = errors;
                                                        if (errors === _errs60) {
                                                          if (Array.isArray(data34)) {
                                                            var valid15 = true;
                                                            const len11 = data34.length;
                                                            for (let i11 = 0; i11 < len11; i11++) {
                                                              const _errs62 = errors;
                                                              if (!validate186(data34[i11], { instancePath: instancePath + "/loads/" + i11, parentData: data34, parentDataProperty: i11, rootData, dynamicAnchors })) {
                                                                vErrors = vErrors === null ? validate186.errors : vErrors.concat(validate186.errors);
                                                                errors = vErrors.length;
                                                              }
                                                              var valid15 = _errs62 === errors;
                                                              if (!valid15) {
                                                                break;
                                                              }
                                                            }
                                                          } else {
                                                            validate52.errors = [{ instancePath: instancePath + "/loads", schemaPath: "#/properties/loads/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                                            return false;
                                                          }
                                                        }
                                                        var valid0 = _errs60 === errors;
                                                      } else {
                                                        var valid0 = true;
                                                      }
                                                      if (valid0) {
                                                        if (data.cases !== void 0) {
                                                          let data36 = data.cases;
                                                          const _errs63 = errors;
                                                          if (errors === _errs63) {
                                                            if (Array.isArray(data36)) {
                                                              var valid16 = true;
                                                              const len12 = data36.length;
                                                              for (let i12 = 0; i12 < len12; i12++) {
                                                                const _errs65 = errors;
                                                                if (!validate203(data36[i12], { instancePath: instancePath + "/cases/" + i12, parentData: data36, parentDataProperty: i12, rootData, dynamicAnchors })) {
                                                                  vErrors = vErrors === null ? validate203.errors : vErrors.concat(validate203.errors);
                                                                  errors = vErrors.length;
                                                                }
                                                                var valid16 = _errs65 === errors;
                                                                if (!valid16) {
                                                                  break;
                                                                }
                                                              }
                                                            } else {
                                                              validate52.errors = [{ instancePath: instancePath + "/cases", schemaPath: "#/properties/cases/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                                              return false;
                                                            }
                                                          }
                                                          var valid0 = _errs63 === errors;
                                                        } else {
                                                          var valid0 = true;
                                                        }
                                                        if (valid0) {
                                                          if (data.groups !== void 0) {
                                                            let data38 = data.groups;
                                                            const _errs66 = errors;
                                                            if (errors === _errs66) {
                                                              if (Array.isArray(data38)) {
                                                                var valid17 = true;
                                                                const len13 = data38.length;
                                                                for (let i13 = 0; i13 < len13; i13++) {
                                                                  const _errs68 = errors;
                                                                  if (!validate207(data38[i13], { instancePath: instancePath + "/groups/" + i13, parentData: data38, parentDataProperty: i13, rootData, dynamicAnchors })) {
                                                                    vErrors = vErrors === null ? validate207.errors : vErrors.concat(validate207.errors);
                                                                    errors = vErrors.length;
                                                                  }
                                                                  var valid17 = _errs68 === errors;
                                                                  if (!valid17) {
                                                                    break;
                                                                  }
                                                                }
                                                              } else {
                                                                validate52.errors = [{ instancePath: instancePath + "/groups", schemaPath: "#/properties/groups/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                                                return false;
                                                              }
                                                            }
                                                            var valid0 = _errs66 === errors;
                                                          } else {
                                                            var valid0 = true;
                                                          }
                                                          if (valid0) {
                                                            if (data.zones !== void 0) {
                                                              let data40 = data.zones;
                                                              const _errs69 = errors;
                                                              if (errors === _errs69) {
                                                                if (Array.isArray(data40)) {
                                                                  var valid18 = true;
                                                                  const len14 = data40.length;
                                                                  for (let i14 = 0; i14 < len14; i14++) {
                                                                    const _errs71 = errors;
                                                                    if (!validate211(data40[i14], { instancePath: instancePath + "/zones/" + i14, parentData: data40, parentDataProperty: i14, rootData, dynamicAnchors })) {
                                                                      vErrors = vErrors === null ? validate211.errors : vErrors.concat(validate211.errors);
                                                                      errors = vErrors.length;
                                                                    }
                                                                    var valid18 = _errs71 === errors;
                                                                    if (!valid18) {
                                                                      break;
                                                                    }
                                                                  }
                                                                } else {
                                                                  validate52.errors = [{ instancePath: instancePath + "/zones", schemaPath: "#/properties/zones/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                                                  return false;
                                                                }
                                                              }
                                                              var valid0 = _errs69 === errors;
                                                            } else {
                                                              var valid0 = true;
                                                            }
                                                            if (valid0) {
                                                              if (data.copies !== void 0) {
                                                                let data42 = data.copies;
                                                                const _errs72 = errors;
                                                                if (errors === _errs72) {
                                                                  if (Array.isArray(data42)) {
                                                                    var valid19 = true;
                                                                    const len15 = data42.length;
                                                                    for (let i15 = 0; i15 < len15; i15++) {
                                                                      const _errs74 = errors;
                                                                      if (!validate215(data42[i15], { instancePath: instancePath + "/copies/" + i15, parentData: data42, parentDataProperty: i15, rootData, dynamicAnchors })) {
                                                                        vErrors = vErrors === null ? validate215.errors : vErrors.concat(validate215.errors);
                                                                        errors = vErrors.length;
                                                                      }
                                                                      var valid19 = _errs74 === errors;
                                                                      if (!valid19) {
                                                                        break;
                                                                      }
                                                                    }
                                                                  } else {
                                                                    validate52.errors = [{ instancePath: instancePath + "/copies", schemaPath: "#/properties/copies/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                                                    return false;
                                                                  }
                                                                }
                                                                var valid0 = _errs72 === errors;
                                                              } else {
                                                                var valid0 = true;
                                                              }
                                                            }
                                                          }
                                                        }
                                                      }
                                                    }
                                                  }
                                                }
                                              }
                                            }
                                          }
                                        }
                                      }
                                    }
                                  }
                                }
                              }
                            }
                          }
                        }
                      }
                    }
                  }
                }
              }
            }
          }
        }
      }
    } else {
      validate52.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate52.errors = vErrors;
  return errors === 0;
}
validate52.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
export {
  whole
};
