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
var schema19 = { "$schema": "https://json-schema.org/draft/2020-12/schema", "$id": "https://trysquare.invalid/schema/stock-1.json", "title": "StockFile", "description": "What a workshop can buy or cut, format 1: profiles, connectors, screws, nuts and the rest. A part replaces an earlier one of the same name, the built-in ones included.", "type": "object", "required": ["format", "units", "title"], "additionalProperties": false, "properties": { "$schema": { "type": "string", "description": "Where an editor finds this schema." }, "format": { "const": 1, "description": "The version of this file format: 1." }, "units": { "enum": ["mm-N-kg", "in-lbf-lb"], "description": 'What a bare number means. mm-N-kg: mm, N, N\xB7m, MPa, kg, kg/m\xB3. in-lbf-lb: in, lbf, lbf\xB7in, psi, lb, lb/in\xB3. Angles are degrees in both. A string carries its own unit: "30 in", "12 N\xB7m".' }, "title": { "type": "string", "minLength": 1, "maxLength": 200, "description": "Whose stock this is.", "examples": ["Workshop rack, east hall"] }, "notes": { "description": "Free words for the reader of the file; never inspected.", "anyOf": [{ "type": "string" }, { "type": "array", "items": { "type": "string" } }] }, "materials": { "type": "array", "items": { "$ref": "#/$defs/material" }, "description": "What profiles are made of." }, "series": { "type": "array", "items": { "$ref": "#/$defs/series" }, "description": "Cell geometry that generated profiles share." }, "profiles": { "type": "array", "items": { "$ref": "#/$defs/profile" }, "description": "Bars by their cross-section: generated from a series, or drawn." }, "connectors": { "type": "array", "items": { "$ref": "#/$defs/connector" }, "description": "Brackets, plates, end fasteners, end screws, ties, pivots and hinges." }, "screws": { "type": "array", "items": { "$ref": "#/$defs/screwFamily" }, "description": "Screws, one entry for all lengths of one kind." }, "nuts": { "type": "array", "items": { "$ref": "#/$defs/nut" }, "description": "T-nuts." }, "caps": { "type": "array", "items": { "$ref": "#/$defs/cap" }, "description": "Covers of cut ends." }, "stands": { "type": "array", "items": { "$ref": "#/$defs/stockStand" }, "description": "Levelling feet and casters." }, "sheets": { "type": "array", "items": { "$ref": "#/$defs/sheetFamily" }, "description": "Panel sheets, one entry for all thicknesses of one material." }, "gaskets": { "type": "array", "items": { "$ref": "#/$defs/gasket" }, "description": "Strips that hold a panel's edge in a slot." }, "tools": { "type": "array", "items": { "$ref": "#/$defs/toolFamily" }, "description": "Keys and drivers, one entry for all sizes of one kind." } }, "$defs": { "partName": { "type": "string", "minLength": 1, "maxLength": 120, "description": "The name frames use; unique among parts of its kind.", "examples": ["40x40-8", "inside-bracket-40"] }, "reference": { "type": "string", "minLength": 1, "maxLength": 120, "description": "The name of another part of stock." }, "about": { "type": "string", "maxLength": 400, "description": "One line for people." }, "source": { "type": "string", "minLength": 1, "maxLength": 400, "description": "Where the numbers come from: standard and table, test report, or how they were computed." }, "length": { "type": ["number", "string"], "maxLength": 64, "description": "A length: a number in mm (or in), or a string with its unit.", "x-quantity": "length", "examples": [40, "1.5 in"] }, "angle": { "type": ["number", "string"], "maxLength": 64, "description": "An angle: a number in degrees, or a string with its unit.", "x-quantity": "angle", "examples": [60] }, "force": { "type": ["number", "string"], "maxLength": 64, "description": "A force: a number in N (or lbf), or a string with its unit.", "x-quantity": "force", "examples": [8e3, "8 kN"] }, "moment": { "type": ["number", "string"], "maxLength": 64, "description": "A moment or torque: a number in N\xB7m (or lbf\xB7in), or a string with its unit.", "x-quantity": "moment", "examples": [12, "12 N\xB7m"] }, "stress": { "type": ["number", "string"], "maxLength": 64, "description": "A stress or modulus: a number in MPa (or psi), or a string with its unit.", "x-quantity": "stress", "examples": [150, "35 ksi"] }, "massValue": { "type": ["number", "string"], "maxLength": 64, "description": "A mass: a number in kg (or lb), or a string with its unit.", "x-quantity": "mass", "examples": [0.08, "80 g"] }, "density": { "type": ["number", "string"], "maxLength": 64, "description": "A density: a number in kg/m\xB3 (or lb/in\xB3), or a string with its unit.", "x-quantity": "massDensity", "examples": [2700] }, "rotationalStiffness": { "type": ["number", "string"], "maxLength": 64, "description": "A rotational stiffness: a number in N\xB7m/rad (or lbf\xB7in/rad), or a string with its unit.", "x-quantity": "rotationalStiffness", "examples": [8e3, "8 kN\xB7m/rad"] }, "expansion": { "type": "number", "minimum": 0, "maximum": 1e-3, "description": "Linear thermal expansion per kelvin, in both unit systems.", "examples": [23e-6] }, "lengthPair": { "type": "array", "items": { "$ref": "#/$defs/length" }, "minItems": 2, "maxItems": 2, "tsType": "[Length, Length]", "description": "Two lengths.", "examples": [[22, 0]] }, "polygon": { "type": "array", "minItems": 3, "maxItems": 5e3, "items": { "$ref": "#/$defs/lengthPair" }, "description": "Corners [y, z] in order, not repeated at the end; the polygon must not cross itself." }, "slotSize": { "type": "string", "minLength": 1, "maxLength": 40, "description": "Which nuts and lugs fit: parts of another slot size do not. The built-in sizes are 5, 6, 8, 10, 1/4 and 5/16.", "examples": ["8"] }, "thread": { "type": "string", "minLength": 1, "maxLength": 40, "description": "Metric coarse thread, or inch size and threads per inch.", "examples": ["M8", "1/4-20"] }, "weight": { "enum": ["light", "standard", "heavy"], "description": "Wall class." }, "faceName": { "enum": ["A", "B", "C", "D"], "description": "A face of a bar: A looks along +y of the section, B +z, C \u2212y, D \u2212z." }, "torques": { "type": "object", "additionalProperties": { "$ref": "#/$defs/moment" }, "description": "Rated tightening torque by thread, for a nut in this profile's slot; computed from the lip rating when left out.", "examples": [{ "M8": 12 }] }, "material": { "type": "object", "required": ["name", "elasticModulus", "shearModulus", "density", "expansion", "proof", "ultimate", "bucklingClass", "source"], "additionalProperties": false, "description": "An aluminium alloy and temper.", "properties": { "name": { "$ref": "#/$defs/partName" }, "elasticModulus": { "$ref": "#/$defs/stress" }, "shearModulus": { "$ref": "#/$defs/stress" }, "density": { "$ref": "#/$defs/density" }, "expansion": { "$ref": "#/$defs/expansion" }, "proof": { "$ref": "#/$defs/stress", "description": "0.2 % proof strength, least value for the wall thicknesses used." }, "ultimate": { "$ref": "#/$defs/stress", "description": "Tensile strength, least value." }, "bucklingClass": { "enum": ["A", "B"], "description": "Buckling class of EN 1999-1-1." }, "source": { "$ref": "#/$defs/source" } }, "examples": [{ "name": "6060-T66", "elasticModulus": 7e4, "shearModulus": 27e3, "density": 2700, "expansion": 23e-6, "proof": 150, "ultimate": 195, "bucklingClass": "A", "source": "EN 1999-1-1 Table 3.2b" }] }, "slotGeometry": { "type": "object", "required": ["opening", "lip", "cavity", "depth"], "additionalProperties": false, "description": "The T-shaped slot in the middle of every cell's face.", "properties": { "opening": { "$ref": "#/$defs/length", "description": "Width between the lips." }, "lip": { "$ref": "#/$defs/length", "description": "Thickness of the lips." }, "cavity": { "$ref": "#/$defs/length", "description": "Width behind the lips." }, "depth": { "$ref": "#/$defs/length", "description": "From the face to the slot floor." }, "web": { "$ref": "#/$defs/length", "description": "Least thickness of the diagonal webs between core and corners; the slot floor is tapered at 45\xB0 to leave it. Without it the cavity is a rectangle." } }, "examples": [{ "opening": 8.2, "lip": 4.5, "cavity": 18, "depth": 12.5, "web": 2.8 }] }, "series": { "type": "object", "required": ["name", "pitch", "slotSize", "weight", "material", "stockLength", "slot"], "additionalProperties": false, "description": "One square cell: pitch, slot, core, walls. Profiles are made by repeating it.", "properties": { "name": { "$ref": "#/$defs/partName" }, "about": { "$ref": "#/$defs/about" }, "pitch": { "$ref": "#/$defs/length", "description": "Side of a cell, and distance between slots." }, "slotSize": { "$ref": "#/$defs/slotSize" }, "weight": { "$ref": "#/$defs/weight" }, "material": { "$ref": "#/$defs/reference", "description": "Name of a material in stock.", "examples": ["6060-T66"] }, "stockLength": { "$ref": "#/$defs/length", "description": "Length bars are sold in." }, "slot": { "$ref": "#/$defs/slotGeometry" }, "bore": { "type": "object", "required": ["diameter", "thread"], "additionalProperties": false, "description": "Core bore of every cell; none when left out.", "properties": { "diameter": { "$ref": "#/$defs/length" }, "thread": { "$ref": "#/$defs/thread", "description": "Thread it can be tapped to." } } }, "cornerRadius": { "$ref": "#/$defs/length", "description": "Radius of the outer corners; sharp when left out." }, "cornerWall": { "$ref": "#/$defs/length", "description": "Wall round the hollow in each corner; corners are solid when left out." }, "cellWall": { "$ref": "#/$defs/length", "description": "Outer wall of the hollows between cells of doubles and quads; solid when left out." }, "closedWall": { "$ref": "#/$defs/length", "description": "Skin over the slots of a closed face; needed when a profile closes faces." }, "chordError": { "$ref": "#/$defs/length", "description": "How far the polygon of a round may lie off the true circle; standard 0.02 mm." }, "lipRating": { "$ref": "#/$defs/force", "description": "Tension a nut may put on the lips, from a test. Computed when left out; see ratedNut." }, "lipSource": { "$ref": "#/$defs/source", "description": "Where lipRating comes from." }, "ratedNut": { "$ref": "#/$defs/lengthPair", "description": "Length along and width across the slot of the nut that the computed lip rating is for; as wide as twice the opening and as long as that when left out." }, "torques": { "$ref": "#/$defs/torques" } } }, "profile": { "type": "object", "discriminator": { "propertyName": "kind" }, "oneOf": [{ "$ref": "#/$defs/generatedProfile" }, { "$ref": "#/$defs/drawnProfile" }], "description": "A bar's cross-section: generated from a series, or drawn.", "x-expected": "a profile of kind generated or drawn" }, "generatedProfile": { "type": "object", "required": ["kind", "name", "series", "columns", "rows"], "additionalProperties": false, "description": "Cells of a series side by side.", "properties": { "kind": { "const": "generated" }, "name": { "$ref": "#/$defs/partName" }, "about": { "$ref": "#/$defs/about" }, "series": { "$ref": "#/$defs/reference", "description": "Name of a series.", "examples": ["40-8"] }, "columns": { "type": "integer", "minimum": 1, "maximum": 8, "description": "Cells across the width (along z)." }, "rows": { "type": "integer", "minimum": 1, "maximum": 8, "description": "Cells over the height (along y)." }, "closed": { "type": "array", "items": { "$ref": "#/$defs/faceName" }, "minItems": 1, "maxItems": 4, "description": "Faces whose slots are closed by a skin." } }, "examples": [{ "kind": "generated", "name": "40x80-8", "series": "40-8", "columns": 1, "rows": 2 }] }, "drawnProfile": { "type": "object", "required": ["kind", "name", "pitch", "slotSize", "weight", "material", "stockLength", "lipRating", "lipSource", "outline", "slots"], "additionalProperties": false, "description": "A cross-section drawn corner by corner, [y, z] about the middle of its envelope: y out of face A, z out of face B.", "properties": { "kind": { "const": "drawn" }, "name": { "$ref": "#/$defs/partName" }, "about": { "$ref": "#/$defs/about" }, "pitch": { "$ref": "#/$defs/length", "description": "Distance between slots, or side of a single bar." }, "slotSize": { "$ref": "#/$defs/slotSize" }, "weight": { "$ref": "#/$defs/weight" }, "material": { "$ref": "#/$defs/reference" }, "stockLength": { "$ref": "#/$defs/length" }, "lipRating": { "$ref": "#/$defs/force", "description": "Tension a nut may put on the lips." }, "lipSource": { "$ref": "#/$defs/source" }, "torques": { "$ref": "#/$defs/torques" }, "outline": { "$ref": "#/$defs/polygon", "description": "Outer boundary, slots included." }, "holes": { "type": "array", "items": { "$ref": "#/$defs/polygon" }, "description": "Bores and hollows as polygons." }, "slots": { "type": "array", "items": { "$ref": "#/$defs/drawnSlot" }, "description": "The slots the outline draws." }, "bores": { "type": "array", "items": { "$ref": "#/$defs/drawnBore" }, "description": "Holes that can be tapped at a cut end." } } }, "drawnSlot": { "type": "object", "required": ["face", "across", "opening", "lip", "depth", "cavity"], "additionalProperties": false, "description": "One slot of a drawn profile.", "properties": { "face": { "$ref": "#/$defs/faceName" }, "across": { "$ref": "#/$defs/length", "description": "From the middle of the face to the slot's line, towards the face named next (A, B, C, D, A)." }, "opening": { "$ref": "#/$defs/length" }, "lip": { "$ref": "#/$defs/length" }, "depth": { "$ref": "#/$defs/length" }, "cavity": { "$ref": "#/$defs/length" }, "closed": { "type": "boolean", "description": "Under a skin; standard false." } } }, "drawnBore": { "type": "object", "required": ["at", "diameter", "thread"], "additionalProperties": false, "description": "One bore of a drawn profile.", "properties": { "at": { "$ref": "#/$defs/lengthPair", "description": "Centre [y, z]." }, "diameter": { "$ref": "#/$defs/length" }, "thread": { "$ref": "#/$defs/thread" } } }, "screwFamily": { "type": "object", "required": ["name", "thread", "diameter", "pitch", "head", "headDiameter", "headHeight", "key", "socketDepth", "propertyClass", "torque", "lengths", "source"], "additionalProperties": false, "description": "Screws that differ only in length.", "properties": { "name": { "$ref": "#/$defs/partName", "pattern": "\\{length\\}", "description": "Name with {length} where the length goes, as it is written in lengths.", "examples": ["M8x{length}"] }, "thread": { "$ref": "#/$defs/thread" }, "diameter": { "$ref": "#/$defs/length", "description": "Nominal thread diameter." }, "pitch": { "$ref": "#/$defs/length", "description": "Thread pitch." }, "head": { "enum": ["cap", "button", "countersunk", "hex", "none"], "description": "Shape of the head." }, "headDiameter": { "$ref": "#/$defs/length", "description": "Largest head diameter." }, "headHeight": { "$ref": "#/$defs/length", "description": "Largest head height." }, "key": { "$ref": "#/$defs/length", "description": "Key size across flats." }, "socketDepth": { "$ref": "#/$defs/length", "description": "Least depth of the socket; 0 for external drives." }, "propertyClass": { "type": "string", "minLength": 1, "maxLength": 40, "description": "Strength class.", "examples": ["8.8"] }, "torque": { "$ref": "#/$defs/moment", "description": "Tightening torque the screw itself may take; what the slot allows is on the profile." }, "lengths": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/length" }, "description": "Lengths in stock: under the head, or over all for countersunk heads.", "examples": [[12, 16, 20]] }, "source": { "$ref": "#/$defs/source" } } }, "nut": { "type": "object", "required": ["name", "kind", "slotSize", "thread", "length", "width", "thickness", "engagement"], "additionalProperties": false, "description": "A T-nut.", "properties": { "name": { "$ref": "#/$defs/partName" }, "kind": { "enum": ["end-load", "drop-in"], "description": "end-load: pushed in from a cut end. drop-in: put through the opening anywhere." }, "slotSize": { "$ref": "#/$defs/slotSize" }, "thread": { "$ref": "#/$defs/thread" }, "length": { "$ref": "#/$defs/length", "description": "Along the slot." }, "width": { "$ref": "#/$defs/length", "description": "Across the slot, under the lips." }, "thickness": { "$ref": "#/$defs/length", "description": "From the underside of the lips into the slot." }, "engagement": { "$ref": "#/$defs/length", "description": "Length of thread the screw engages." } }, "examples": [{ "name": "nut-8-M8", "kind": "end-load", "slotSize": "8", "thread": "M8", "length": 20, "width": 15, "thickness": 6, "engagement": 6 }] }, "holeSpec": { "type": "object", "required": ["id", "at", "diameter"], "additionalProperties": false, "description": "A screw hole.", "properties": { "id": { "type": "string", "pattern": "^[a-z][a-z0-9-]*$", "maxLength": 20, "description": "a1, a2 \u2026 on leg a of a bracket, b1 \u2026 on leg b, h1 \u2026 on plates.", "examples": ["a1"] }, "at": { "$ref": "#/$defs/lengthPair", "description": "On a bracket: distance from the corner, and sideways from the middle. On a plate: [u, v]." }, "diameter": { "$ref": "#/$defs/length" } } }, "legSpec": { "type": "object", "required": ["length", "thickness", "holes"], "additionalProperties": false, "description": "One leg of a bracket.", "properties": { "length": { "$ref": "#/$defs/length", "description": "From the corner to the end of the leg." }, "thickness": { "$ref": "#/$defs/length" }, "holes": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/holeSpec" }, "description": "Its screw holes." } } }, "tested": { "type": "object", "required": ["reference"], "additionalProperties": false, "description": "Values from tests; they replace what is computed.", "properties": { "rotationalStiffness": { "$ref": "#/$defs/rotationalStiffness" }, "slip": { "$ref": "#/$defs/force", "description": "Slip load, design value." }, "moment": { "$ref": "#/$defs/moment", "description": "Moment capacity, design value." }, "reference": { "$ref": "#/$defs/source", "description": "Test report." } } }, "connector": { "type": "object", "discriminator": { "propertyName": "kind" }, "description": "A part that joins bars.", "x-expected": "a connector of kind bracket, plate, end-fastener, end-screw, side-tie, pivot or hinge", "oneOf": [{ "$ref": "#/$defs/bracket" }, { "$ref": "#/$defs/plate" }, { "$ref": "#/$defs/endFastener" }, { "$ref": "#/$defs/endScrew" }, { "$ref": "#/$defs/sideTie" }, { "$ref": "#/$defs/pivot" }] }, "bracket": { "type": "object", "required": ["kind", "name", "slotSize", "mass", "legs", "width", "screw"], "additionalProperties": false, "description": "An angle in an inside corner. Leg a lies on the ending bar, leg b on the bar it meets.", "properties": { "kind": { "const": "bracket" }, "name": { "$ref": "#/$defs/partName" }, "about": { "$ref": "#/$defs/about" }, "slotSize": { "$ref": "#/$defs/slotSize" }, "mass": { "$ref": "#/$defs/massValue", "description": "Without screws and nuts." }, "tested": { "$ref": "#/$defs/tested" }, "legs": { "type": "object", "required": ["a", "b"], "additionalProperties": false, "description": "Leg a lies on the ending bar, leg b on the bar it meets.", "properties": { "a": { "$ref": "#/$defs/legSpec" }, "b": { "$ref": "#/$defs/legSpec" } } }, "width": { "$ref": "#/$defs/length", "description": "Along the corner." }, "gussets": { "type": "integer", "minimum": 0, "maximum": 2, "description": "Side walls between the legs; standard 0." }, "gussetThickness": { "$ref": "#/$defs/length", "description": "Thickness of a side wall." }, "lugs": { "type": "boolean", "description": "Lugs that fill the slot and resist turning; standard false." }, "screw": { "$ref": "#/$defs/reference", "description": "Name of its screw in stock.", "examples": ["M8x16"] } } }, "plate": { "type": "object", "required": ["kind", "name", "slotSize", "mass", "outline", "thickness", "holes", "screw"], "additionalProperties": false, "description": "A flat plate on faces that lie in one plane.", "properties": { "kind": { "const": "plate" }, "name": { "$ref": "#/$defs/partName" }, "about": { "$ref": "#/$defs/about" }, "slotSize": { "$ref": "#/$defs/slotSize" }, "mass": { "$ref": "#/$defs/massValue" }, "tested": { "$ref": "#/$defs/tested" }, "outline": { "$ref": "#/$defs/polygon", "description": "Corners [u, v]; [0, 0] is the point that fastenings place." }, "thickness": { "$ref": "#/$defs/length" }, "holes": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/holeSpec" }, "description": "Its screw holes." }, "screw": { "$ref": "#/$defs/reference" } } }, "endFastener": { "type": "object", "required": ["kind", "name", "slotSize", "mass", "screw", "depth", "keyFrom", "keyHole", "body"], "additionalProperties": false, "description": "Sits in a slot of the ending bar and pulls its cut end against the bar it meets.", "properties": { "kind": { "const": "end-fastener" }, "name": { "$ref": "#/$defs/partName" }, "about": { "$ref": "#/$defs/about" }, "slotSize": { "$ref": "#/$defs/slotSize" }, "mass": { "$ref": "#/$defs/massValue" }, "tested": { "$ref": "#/$defs/tested" }, "screw": { "$ref": "#/$defs/reference", "description": "Name of its screw in stock; the screw's length is what stands out of the cut end." }, "depth": { "$ref": "#/$defs/length", "description": "Screw axis below the face." }, "keyFrom": { "$ref": "#/$defs/length", "description": "Where the key enters, from the cut end." }, "keyHole": { "$ref": "#/$defs/length", "description": "Diameter of the hole the key enters by." }, "body": { "$ref": "#/$defs/length", "description": "Length of slot it fills from the end." }, "lugs": { "type": "boolean", "description": "A claw or lug keeps the end from turning; standard false." } } }, "endScrew": { "type": "object", "required": ["kind", "name", "slotSize", "mass", "screw", "head", "accessHole", "engagement"], "additionalProperties": false, "description": "A screw along the ending bar's axis into its tapped core bore.", "properties": { "kind": { "const": "end-screw" }, "name": { "$ref": "#/$defs/partName" }, "about": { "$ref": "#/$defs/about" }, "slotSize": { "$ref": "#/$defs/slotSize" }, "mass": { "$ref": "#/$defs/massValue" }, "tested": { "$ref": "#/$defs/tested" }, "screw": { "$ref": "#/$defs/reference" }, "head": { "enum": ["in-slot", "on-far-face"], "description": "Behind the lips of the crossing bar's slot, or on its far face." }, "accessHole": { "$ref": "#/$defs/length", "description": "Hole drilled across the crossing bar." }, "engagement": { "$ref": "#/$defs/length", "description": "Least thread engaged in the core." } } }, "sideTie": { "type": "object", "required": ["kind", "name", "slotSize", "mass", "screw"], "additionalProperties": false, "description": "Holds two bars that lie side by side, from slot to slot.", "properties": { "kind": { "const": "side-tie" }, "name": { "$ref": "#/$defs/partName" }, "about": { "$ref": "#/$defs/about" }, "slotSize": { "$ref": "#/$defs/slotSize" }, "mass": { "$ref": "#/$defs/massValue" }, "tested": { "$ref": "#/$defs/tested" }, "screw": { "$ref": "#/$defs/reference" }, "accessHole": { "$ref": "#/$defs/length", "description": "Hole drilled across the bar named first, through which the key meets the head behind its lips; standard 1.3 times the key." }, "lugs": { "type": "boolean", "description": "Fills both slots and so carries shear; standard false." } } }, "pivot": { "type": "object", "required": ["kind", "name", "slotSize", "mass", "screw", "gap", "thickness", "holes"], "additionalProperties": false, "description": "Turns about one axis by design. A pivot can be locked; a hinge has one leaf on the door and one on the bar it hangs on.", "properties": { "kind": { "enum": ["pivot", "hinge"], "description": "pivot: can be locked. hinge: hangs a door." }, "name": { "$ref": "#/$defs/partName" }, "about": { "$ref": "#/$defs/about" }, "slotSize": { "$ref": "#/$defs/slotSize" }, "mass": { "$ref": "#/$defs/massValue" }, "tested": { "$ref": "#/$defs/tested" }, "screw": { "$ref": "#/$defs/reference" }, "gap": { "$ref": "#/$defs/length", "description": "Distance it keeps between the bars." }, "thickness": { "$ref": "#/$defs/length", "description": "Thickness of a leaf." }, "holes": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/holeSpec" }, "description": "Its screw holes, on both leaves." } } }, "cap": { "type": "object", "required": ["name", "profiles", "thickness", "mass"], "additionalProperties": false, "description": "A cover for the cut end of the profiles named.", "properties": { "name": { "$ref": "#/$defs/partName" }, "profiles": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/reference" }, "description": "Names of profiles it closes." }, "thickness": { "$ref": "#/$defs/length" }, "mass": { "$ref": "#/$defs/massValue" } }, "examples": [{ "name": "cap-40x40", "profiles": ["40x40-8"], "thickness": 4, "mass": 6e-3 }] }, "stockStand": { "type": "object", "required": ["name", "kind", "mount", "diameter", "collar", "raise", "capacity", "mass"], "additionalProperties": false, "description": "A levelling foot or a caster.", "properties": { "name": { "$ref": "#/$defs/partName" }, "kind": { "enum": ["foot", "caster"], "description": "foot: stands. caster: rolls." }, "mount": { "$ref": "#/$defs/mount" }, "diameter": { "$ref": "#/$defs/length", "description": "Of the pad or wheel." }, "collar": { "$ref": "#/$defs/length", "description": "Diameter of what covers the bar's end." }, "raise": { "$ref": "#/$defs/lengthPair", "description": "Least and greatest distance from floor to bar end." }, "capacity": { "$ref": "#/$defs/force" }, "brake": { "type": "boolean", "description": "Standard false." }, "swivel": { "type": "boolean", "description": "Turns about the upright axis; standard false." }, "mass": { "$ref": "#/$defs/massValue" } } }, "mount": { "type": "object", "discriminator": { "propertyName": "by" }, "oneOf": [{ "$ref": "#/$defs/stemMount" }, { "$ref": "#/$defs/plateMount" }], "description": "How a stand is fixed to a bar's end.", "x-expected": "a mount by stem or plate" }, "stemMount": { "type": "object", "required": ["by", "thread", "engagement"], "additionalProperties": false, "description": "A threaded stem in the tapped core bore.", "properties": { "by": { "const": "stem" }, "thread": { "$ref": "#/$defs/thread" }, "engagement": { "$ref": "#/$defs/length", "description": "Length of thread in the bore." } } }, "plateMount": { "type": "object", "required": ["by", "size", "thickness"], "additionalProperties": false, "description": "A plate under the bar's end.", "properties": { "by": { "const": "plate" }, "size": { "$ref": "#/$defs/lengthPair" }, "thickness": { "$ref": "#/$defs/length" }, "holes": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/holeSpec" }, "description": "Its screw holes, from the middle of the plate along its size; each is screwed into a core bore. Where left out, the plate is taken to be drilled to suit the bar." } } }, "sheetFamily": { "type": "object", "required": ["name", "thicknesses", "elasticModulus", "poisson", "density", "expansion", "strength", "brittle", "source"], "additionalProperties": false, "description": "Sheets of one material.", "properties": { "name": { "$ref": "#/$defs/partName", "pattern": "\\{thickness\\}", "description": "Name with {thickness} where the thickness goes, as it is written in thicknesses.", "examples": ["polycarbonate-{thickness}"] }, "thicknesses": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/length" }, "description": "Thicknesses in stock.", "examples": [[3, 5]] }, "elasticModulus": { "$ref": "#/$defs/stress" }, "poisson": { "type": "number", "minimum": 0, "exclusiveMaximum": 0.5, "description": "Poisson's ratio." }, "shearModulus": { "$ref": "#/$defs/stress", "description": "Against shear in the plane of the sheet; standard E / (2 (1 + \u03BD)), which is too much for wood." }, "density": { "$ref": "#/$defs/density" }, "expansion": { "$ref": "#/$defs/expansion" }, "strength": { "$ref": "#/$defs/stress", "description": "Yield or bending strength." }, "moisture": { "type": "number", "minimum": 0, "maximum": 0.05, "description": "By which share of its length it grows from dry to damp, in the direction that moves more; standard 0.", "examples": [6e-3] }, "brittle": { "type": "boolean", "description": "Breaks without yielding." }, "source": { "$ref": "#/$defs/source" } } }, "gasket": { "type": "object", "required": ["name", "slotSize", "sheet", "depth"], "additionalProperties": false, "description": "A strip between slot and panel edge.", "properties": { "name": { "$ref": "#/$defs/partName" }, "slotSize": { "$ref": "#/$defs/slotSize" }, "sheet": { "$ref": "#/$defs/lengthPair", "description": "Least and greatest sheet thickness it takes." }, "depth": { "$ref": "#/$defs/length", "description": "Depth of slot left for the sheet's edge." } } }, "toolFamily": { "type": "object", "required": ["name", "kind", "swing", "tilt", "sizes", "source"], "additionalProperties": false, "description": "One kind of key in several sizes.", "properties": { "name": { "$ref": "#/$defs/partName", "pattern": "\\{size\\}", "description": "Name with {size} where the size goes.", "examples": ["hex-key-{size}"] }, "kind": { "enum": ["hex-key", "ball-end-key", "t-handle", "bit-ratchet", "wrench"], "description": "How it reaches and swings." }, "swing": { "$ref": "#/$defs/angle", "description": "Least swing between two bites." }, "tilt": { "$ref": "#/$defs/angle", "description": "Largest tilt in the socket; 0 for straight keys." }, "sizes": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/toolSize" }, "description": "Sizes in the kit." }, "source": { "$ref": "#/$defs/source" } } }, "toolSize": { "type": "object", "required": ["size", "key", "longArm", "shortArm", "torque"], "additionalProperties": false, "description": "One size of a tool.", "properties": { "size": { "type": "string", "minLength": 1, "maxLength": 20, "description": "As it goes into the name.", "examples": ["6", "5/32"] }, "key": { "$ref": "#/$defs/length", "description": "Across flats." }, "longArm": { "$ref": "#/$defs/length", "description": "Long arm; of a T-handle or ratchet the shaft." }, "shortArm": { "$ref": "#/$defs/length", "description": "Short arm; of a T-handle or ratchet the handle." }, "torque": { "$ref": "#/$defs/moment", "description": "Torque it may give." } } } } };
var func1 = Object.prototype.hasOwnProperty;
var func2 = require_ucs2length().default;
var schema20 = { "type": "object", "required": ["name", "elasticModulus", "shearModulus", "density", "expansion", "proof", "ultimate", "bucklingClass", "source"], "additionalProperties": false, "description": "An aluminium alloy and temper.", "properties": { "name": { "$ref": "#/$defs/partName" }, "elasticModulus": { "$ref": "#/$defs/stress" }, "shearModulus": { "$ref": "#/$defs/stress" }, "density": { "$ref": "#/$defs/density" }, "expansion": { "$ref": "#/$defs/expansion" }, "proof": { "$ref": "#/$defs/stress", "description": "0.2 % proof strength, least value for the wall thicknesses used." }, "ultimate": { "$ref": "#/$defs/stress", "description": "Tensile strength, least value." }, "bucklingClass": { "enum": ["A", "B"], "description": "Buckling class of EN 1999-1-1." }, "source": { "$ref": "#/$defs/source" } }, "examples": [{ "name": "6060-T66", "elasticModulus": 7e4, "shearModulus": 27e3, "density": 2700, "expansion": 23e-6, "proof": 150, "ultimate": 195, "bucklingClass": "A", "source": "EN 1999-1-1 Table 3.2b" }] };
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
  if (errors === 0) {
    if (typeof data === "string") {
      if (func2(data) > 120) {
        validate54.errors = [{ instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" }];
        return false;
      } else {
        if (func2(data) < 1) {
          validate54.errors = [{ instancePath, schemaPath: "#/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
          return false;
        }
      }
    } else {
      validate54.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
      return false;
    }
  }
  validate54.errors = vErrors;
  return errors === 0;
}
validate54.evaluated = { "dynamicProps": false, "dynamicItems": false };
var schema22 = { "type": ["number", "string"], "maxLength": 64, "description": "A stress or modulus: a number in MPa (or psi), or a string with its unit.", "x-quantity": "stress", "examples": [150, "35 ksi"] };
function validate56(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate56.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (!(typeof data == "number" && isFinite(data)) && typeof data !== "string") {
    validate56.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: schema22.type }, message: "must be number,string" }];
    return false;
  }
  if (errors === 0) {
    if (typeof data === "string") {
      if (func2(data) > 64) {
        validate56.errors = [{ instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" }];
        return false;
      }
    }
  }
  validate56.errors = vErrors;
  return errors === 0;
}
validate56.evaluated = { "dynamicProps": false, "dynamicItems": false };
var schema23 = { "type": ["number", "string"], "maxLength": 64, "description": "A density: a number in kg/m\xB3 (or lb/in\xB3), or a string with its unit.", "x-quantity": "massDensity", "examples": [2700] };
function validate59(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate59.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (!(typeof data == "number" && isFinite(data)) && typeof data !== "string") {
    validate59.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: schema23.type }, message: "must be number,string" }];
    return false;
  }
  if (errors === 0) {
    if (typeof data === "string") {
      if (func2(data) > 64) {
        validate59.errors = [{ instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" }];
        return false;
      }
    }
  }
  validate59.errors = vErrors;
  return errors === 0;
}
validate59.evaluated = { "dynamicProps": false, "dynamicItems": false };
function validate61(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate61.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (typeof data == "number" && isFinite(data)) {
      if (data > 1e-3 || isNaN(data)) {
        validate61.errors = [{ instancePath, schemaPath: "#/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e-3 }, message: "must be <= 0.001" }];
        return false;
      } else {
        if (data < 0 || isNaN(data)) {
          validate61.errors = [{ instancePath, schemaPath: "#/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" }];
          return false;
        }
      }
    } else {
      validate61.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "number" }, message: "must be number" }];
      return false;
    }
  }
  validate61.errors = vErrors;
  return errors === 0;
}
validate61.evaluated = { "dynamicProps": false, "dynamicItems": false };
function validate65(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate65.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (typeof data === "string") {
      if (func2(data) > 400) {
        validate65.errors = [{ instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 400 }, message: "must NOT have more than 400 characters" }];
        return false;
      } else {
        if (func2(data) < 1) {
          validate65.errors = [{ instancePath, schemaPath: "#/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
          return false;
        }
      }
    } else {
      validate65.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
      return false;
    }
  }
  validate65.errors = vErrors;
  return errors === 0;
}
validate65.evaluated = { "dynamicProps": false, "dynamicItems": false };
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
      let missing0;
      if (data.name === void 0 && (missing0 = "name") || data.elasticModulus === void 0 && (missing0 = "elasticModulus") || data.shearModulus === void 0 && (missing0 = "shearModulus") || data.density === void 0 && (missing0 = "density") || data.expansion === void 0 && (missing0 = "expansion") || data.proof === void 0 && (missing0 = "proof") || data.ultimate === void 0 && (missing0 = "ultimate") || data.bucklingClass === void 0 && (missing0 = "bucklingClass") || data.source === void 0 && (missing0 = "source")) {
        validate53.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!func1.call(schema20.properties, key0)) {
            validate53.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.name !== void 0) {
            const _errs2 = errors;
            if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.elasticModulus !== void 0) {
              const _errs3 = errors;
              if (!validate56(data.elasticModulus, { instancePath: instancePath + "/elasticModulus", parentData: data, parentDataProperty: "elasticModulus", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate56.errors : vErrors.concat(validate56.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.shearModulus !== void 0) {
                const _errs4 = errors;
                if (!validate56(data.shearModulus, { instancePath: instancePath + "/shearModulus", parentData: data, parentDataProperty: "shearModulus", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate56.errors : vErrors.concat(validate56.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs4 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.density !== void 0) {
                  const _errs5 = errors;
                  if (!validate59(data.density, { instancePath: instancePath + "/density", parentData: data, parentDataProperty: "density", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate59.errors : vErrors.concat(validate59.errors);
                    errors = vErrors.length;
                  }
                  var valid0 = _errs5 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.expansion !== void 0) {
                    const _errs6 = errors;
                    if (!validate61(data.expansion, { instancePath: instancePath + "/expansion", parentData: data, parentDataProperty: "expansion", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate61.errors : vErrors.concat(validate61.errors);
                      errors = vErrors.length;
                    }
                    var valid0 = _errs6 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.proof !== void 0) {
                      const _errs7 = errors;
                      if (!validate56(data.proof, { instancePath: instancePath + "/proof", parentData: data, parentDataProperty: "proof", rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate56.errors : vErrors.concat(validate56.errors);
                        errors = vErrors.length;
                      }
                      var valid0 = _errs7 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.ultimate !== void 0) {
                        const _errs8 = errors;
                        if (!validate56(data.ultimate, { instancePath: instancePath + "/ultimate", parentData: data, parentDataProperty: "ultimate", rootData, dynamicAnchors })) {
                          vErrors = vErrors === null ? validate56.errors : vErrors.concat(validate56.errors);
                          errors = vErrors.length;
                        }
                        var valid0 = _errs8 === errors;
                      } else {
                        var valid0 = true;
                      }
                      if (valid0) {
                        if (data.bucklingClass !== void 0) {
                          let data7 = data.bucklingClass;
                          const _errs9 = errors;
                          if (!(data7 === "A" || data7 === "B")) {
                            validate53.errors = [{ instancePath: instancePath + "/bucklingClass", schemaPath: "#/properties/bucklingClass/enum", keyword: "enum", params: { allowedValues: schema20.properties.bucklingClass.enum }, message: "must be equal to one of the allowed values" }];
                            return false;
                          }
                          var valid0 = _errs9 === errors;
                        } else {
                          var valid0 = true;
                        }
                        if (valid0) {
                          if (data.source !== void 0) {
                            const _errs10 = errors;
                            if (!validate65(data.source, { instancePath: instancePath + "/source", parentData: data, parentDataProperty: "source", rootData, dynamicAnchors })) {
                              vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
                              errors = vErrors.length;
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
var schema26 = { "type": "object", "required": ["name", "pitch", "slotSize", "weight", "material", "stockLength", "slot"], "additionalProperties": false, "description": "One square cell: pitch, slot, core, walls. Profiles are made by repeating it.", "properties": { "name": { "$ref": "#/$defs/partName" }, "about": { "$ref": "#/$defs/about" }, "pitch": { "$ref": "#/$defs/length", "description": "Side of a cell, and distance between slots." }, "slotSize": { "$ref": "#/$defs/slotSize" }, "weight": { "$ref": "#/$defs/weight" }, "material": { "$ref": "#/$defs/reference", "description": "Name of a material in stock.", "examples": ["6060-T66"] }, "stockLength": { "$ref": "#/$defs/length", "description": "Length bars are sold in." }, "slot": { "$ref": "#/$defs/slotGeometry" }, "bore": { "type": "object", "required": ["diameter", "thread"], "additionalProperties": false, "description": "Core bore of every cell; none when left out.", "properties": { "diameter": { "$ref": "#/$defs/length" }, "thread": { "$ref": "#/$defs/thread", "description": "Thread it can be tapped to." } } }, "cornerRadius": { "$ref": "#/$defs/length", "description": "Radius of the outer corners; sharp when left out." }, "cornerWall": { "$ref": "#/$defs/length", "description": "Wall round the hollow in each corner; corners are solid when left out." }, "cellWall": { "$ref": "#/$defs/length", "description": "Outer wall of the hollows between cells of doubles and quads; solid when left out." }, "closedWall": { "$ref": "#/$defs/length", "description": "Skin over the slots of a closed face; needed when a profile closes faces." }, "chordError": { "$ref": "#/$defs/length", "description": "How far the polygon of a round may lie off the true circle; standard 0.02 mm." }, "lipRating": { "$ref": "#/$defs/force", "description": "Tension a nut may put on the lips, from a test. Computed when left out; see ratedNut." }, "lipSource": { "$ref": "#/$defs/source", "description": "Where lipRating comes from." }, "ratedNut": { "$ref": "#/$defs/lengthPair", "description": "Length along and width across the slot of the nut that the computed lip rating is for; as wide as twice the opening and as long as that when left out." }, "torques": { "$ref": "#/$defs/torques" } } };
function validate70(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate70.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (typeof data === "string") {
      if (func2(data) > 400) {
        validate70.errors = [{ instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 400 }, message: "must NOT have more than 400 characters" }];
        return false;
      }
    } else {
      validate70.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
      return false;
    }
  }
  validate70.errors = vErrors;
  return errors === 0;
}
validate70.evaluated = { "dynamicProps": false, "dynamicItems": false };
var schema28 = { "type": ["number", "string"], "maxLength": 64, "description": "A length: a number in mm (or in), or a string with its unit.", "x-quantity": "length", "examples": [40, "1.5 in"] };
function validate72(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate72.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (!(typeof data == "number" && isFinite(data)) && typeof data !== "string") {
    validate72.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: schema28.type }, message: "must be number,string" }];
    return false;
  }
  if (errors === 0) {
    if (typeof data === "string") {
      if (func2(data) > 64) {
        validate72.errors = [{ instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" }];
        return false;
      }
    }
  }
  validate72.errors = vErrors;
  return errors === 0;
}
validate72.evaluated = { "dynamicProps": false, "dynamicItems": false };
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
    if (typeof data === "string") {
      if (func2(data) > 40) {
        validate74.errors = [{ instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 40 }, message: "must NOT have more than 40 characters" }];
        return false;
      } else {
        if (func2(data) < 1) {
          validate74.errors = [{ instancePath, schemaPath: "#/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
          return false;
        }
      }
    } else {
      validate74.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
      return false;
    }
  }
  validate74.errors = vErrors;
  return errors === 0;
}
validate74.evaluated = { "dynamicProps": false, "dynamicItems": false };
var schema30 = { "enum": ["light", "standard", "heavy"], "description": "Wall class." };
function validate76(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate76.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (!(data === "light" || data === "standard" || data === "heavy")) {
    validate76.errors = [{ instancePath, schemaPath: "#/enum", keyword: "enum", params: { allowedValues: schema30.enum }, message: "must be equal to one of the allowed values" }];
    return false;
  }
  validate76.errors = vErrors;
  return errors === 0;
}
validate76.evaluated = { "dynamicProps": false, "dynamicItems": false };
function validate78(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate78.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (typeof data === "string") {
      if (func2(data) > 120) {
        validate78.errors = [{ instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" }];
        return false;
      } else {
        if (func2(data) < 1) {
          validate78.errors = [{ instancePath, schemaPath: "#/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
          return false;
        }
      }
    } else {
      validate78.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
      return false;
    }
  }
  validate78.errors = vErrors;
  return errors === 0;
}
validate78.evaluated = { "dynamicProps": false, "dynamicItems": false };
function validate81(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate81.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.opening === void 0 && (missing0 = "opening") || data.lip === void 0 && (missing0 = "lip") || data.cavity === void 0 && (missing0 = "cavity") || data.depth === void 0 && (missing0 = "depth")) {
        validate81.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "opening" || key0 === "lip" || key0 === "cavity" || key0 === "depth" || key0 === "web")) {
            validate81.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.opening !== void 0) {
            const _errs2 = errors;
            if (!validate72(data.opening, { instancePath: instancePath + "/opening", parentData: data, parentDataProperty: "opening", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.lip !== void 0) {
              const _errs3 = errors;
              if (!validate72(data.lip, { instancePath: instancePath + "/lip", parentData: data, parentDataProperty: "lip", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.cavity !== void 0) {
                const _errs4 = errors;
                if (!validate72(data.cavity, { instancePath: instancePath + "/cavity", parentData: data, parentDataProperty: "cavity", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs4 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.depth !== void 0) {
                  const _errs5 = errors;
                  if (!validate72(data.depth, { instancePath: instancePath + "/depth", parentData: data, parentDataProperty: "depth", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                    errors = vErrors.length;
                  }
                  var valid0 = _errs5 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.web !== void 0) {
                    const _errs6 = errors;
                    if (!validate72(data.web, { instancePath: instancePath + "/web", parentData: data, parentDataProperty: "web", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                      errors = vErrors.length;
                    }
                    var valid0 = _errs6 === errors;
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
      validate81.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate81.errors = vErrors;
  return errors === 0;
}
validate81.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
function validate89(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate89.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (typeof data === "string") {
      if (func2(data) > 40) {
        validate89.errors = [{ instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 40 }, message: "must NOT have more than 40 characters" }];
        return false;
      } else {
        if (func2(data) < 1) {
          validate89.errors = [{ instancePath, schemaPath: "#/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
          return false;
        }
      }
    } else {
      validate89.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
      return false;
    }
  }
  validate89.errors = vErrors;
  return errors === 0;
}
validate89.evaluated = { "dynamicProps": false, "dynamicItems": false };
var schema34 = { "type": ["number", "string"], "maxLength": 64, "description": "A force: a number in N (or lbf), or a string with its unit.", "x-quantity": "force", "examples": [8e3, "8 kN"] };
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
    validate96.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: schema34.type }, message: "must be number,string" }];
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
function validate99(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate99.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (Array.isArray(data)) {
      if (data.length > 2) {
        validate99.errors = [{ instancePath, schemaPath: "#/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" }];
        return false;
      } else {
        if (data.length < 2) {
          validate99.errors = [{ instancePath, schemaPath: "#/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" }];
          return false;
        } else {
          var valid0 = true;
          const len0 = data.length;
          for (let i0 = 0; i0 < len0; i0++) {
            const _errs2 = errors;
            if (!validate72(data[i0], { instancePath: instancePath + "/" + i0, parentData: data, parentDataProperty: i0, rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs2 === errors;
            if (!valid0) {
              break;
            }
          }
        }
      }
    } else {
      validate99.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
      return false;
    }
  }
  validate99.errors = vErrors;
  return errors === 0;
}
validate99.evaluated = { "items": true, "dynamicProps": false, "dynamicItems": false };
var schema37 = { "type": ["number", "string"], "maxLength": 64, "description": "A moment or torque: a number in N\xB7m (or lbf\xB7in), or a string with its unit.", "x-quantity": "moment", "examples": [12, "12 N\xB7m"] };
function validate103(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate103.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (!(typeof data == "number" && isFinite(data)) && typeof data !== "string") {
    validate103.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: schema37.type }, message: "must be number,string" }];
    return false;
  }
  if (errors === 0) {
    if (typeof data === "string") {
      if (func2(data) > 64) {
        validate103.errors = [{ instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" }];
        return false;
      }
    }
  }
  validate103.errors = vErrors;
  return errors === 0;
}
validate103.evaluated = { "dynamicProps": false, "dynamicItems": false };
function validate102(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate102.evaluated;
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
        if (!validate103(data[key0], { instancePath: instancePath + "/" + key0.replace(/~/g, "~0").replace(/\//g, "~1"), parentData: data, parentDataProperty: key0, rootData, dynamicAnchors })) {
          vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
          errors = vErrors.length;
        }
        var valid0 = _errs2 === errors;
        if (!valid0) {
          break;
        }
      }
    } else {
      validate102.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate102.errors = vErrors;
  return errors === 0;
}
validate102.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
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
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.name === void 0 && (missing0 = "name") || data.pitch === void 0 && (missing0 = "pitch") || data.slotSize === void 0 && (missing0 = "slotSize") || data.weight === void 0 && (missing0 = "weight") || data.material === void 0 && (missing0 = "material") || data.stockLength === void 0 && (missing0 = "stockLength") || data.slot === void 0 && (missing0 = "slot")) {
        validate68.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!func1.call(schema26.properties, key0)) {
            validate68.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.name !== void 0) {
            const _errs2 = errors;
            if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.about !== void 0) {
              const _errs3 = errors;
              if (!validate70(data.about, { instancePath: instancePath + "/about", parentData: data, parentDataProperty: "about", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate70.errors : vErrors.concat(validate70.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.pitch !== void 0) {
                const _errs4 = errors;
                if (!validate72(data.pitch, { instancePath: instancePath + "/pitch", parentData: data, parentDataProperty: "pitch", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs4 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.slotSize !== void 0) {
                  const _errs5 = errors;
                  if (!validate74(data.slotSize, { instancePath: instancePath + "/slotSize", parentData: data, parentDataProperty: "slotSize", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
                    errors = vErrors.length;
                  }
                  var valid0 = _errs5 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.weight !== void 0) {
                    const _errs6 = errors;
                    if (!validate76(data.weight, { instancePath: instancePath + "/weight", parentData: data, parentDataProperty: "weight", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors);
                      errors = vErrors.length;
                    }
                    var valid0 = _errs6 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.material !== void 0) {
                      const _errs7 = errors;
                      if (!validate78(data.material, { instancePath: instancePath + "/material", parentData: data, parentDataProperty: "material", rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate78.errors : vErrors.concat(validate78.errors);
                        errors = vErrors.length;
                      }
                      var valid0 = _errs7 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.stockLength !== void 0) {
                        const _errs8 = errors;
                        if (!validate72(data.stockLength, { instancePath: instancePath + "/stockLength", parentData: data, parentDataProperty: "stockLength", rootData, dynamicAnchors })) {
                          vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                          errors = vErrors.length;
                        }
                        var valid0 = _errs8 === errors;
                      } else {
                        var valid0 = true;
                      }
                      if (valid0) {
                        if (data.slot !== void 0) {
                          const _errs9 = errors;
                          if (!validate81(data.slot, { instancePath: instancePath + "/slot", parentData: data, parentDataProperty: "slot", rootData, dynamicAnchors })) {
                            vErrors = vErrors === null ? validate81.errors : vErrors.concat(validate81.errors);
                            errors = vErrors.length;
                          }
                          var valid0 = _errs9 === errors;
                        } else {
                          var valid0 = true;
                        }
                        if (valid0) {
                          if (data.bore !== void 0) {
                            let data8 = data.bore;
                            const _errs10 = errors;
                            if (errors === _errs10) {
                              if (data8 && typeof data8 == "object" && !Array.isArray(data8)) {
                                let missing1;
                                if (data8.diameter === void 0 && (missing1 = "diameter") || data8.thread === void 0 && (missing1 = "thread")) {
                                  validate68.errors = [{ instancePath: instancePath + "/bore", schemaPath: "#/properties/bore/required", keyword: "required", params: { missingProperty: missing1 }, message: "must have required property '" + missing1 + "'" }];
                                  return false;
                                } else {
                                  const _errs12 = errors;
                                  for (const key1 in data8) {
                                    if (!(key1 === "diameter" || key1 === "thread")) {
                                      validate68.errors = [{ instancePath: instancePath + "/bore", schemaPath: "#/properties/bore/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties" }];
                                      return false;
                                      break;
                                    }
                                  }
                                  if (_errs12 === errors) {
                                    if (data8.diameter !== void 0) {
                                      const _errs13 = errors;
                                      if (!validate72(data8.diameter, { instancePath: instancePath + "/bore/diameter", parentData: data8, parentDataProperty: "diameter", rootData, dynamicAnchors })) {
                                        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                                        errors = vErrors.length;
                                      }
                                      var valid1 = _errs13 === errors;
                                    } else {
                                      var valid1 = true;
                                    }
                                    if (valid1) {
                                      if (data8.thread !== void 0) {
                                        const _errs14 = errors;
                                        if (!validate89(data8.thread, { instancePath: instancePath + "/bore/thread", parentData: data8, parentDataProperty: "thread", rootData, dynamicAnchors })) {
                                          vErrors = vErrors === null ? validate89.errors : vErrors.concat(validate89.errors);
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
                                validate68.errors = [{ instancePath: instancePath + "/bore", schemaPath: "#/properties/bore/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                                return false;
                              }
                            }
                            var valid0 = _errs10 === errors;
                          } else {
                            var valid0 = true;
                          }
                          if (valid0) {
                            if (data.cornerRadius !== void 0) {
                              const _errs15 = errors;
                              if (!validate72(data.cornerRadius, { instancePath: instancePath + "/cornerRadius", parentData: data, parentDataProperty: "cornerRadius", rootData, dynamicAnchors })) {
                                vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                                errors = vErrors.length;
                              }
                              var valid0 = _errs15 === errors;
                            } else {
                              var valid0 = true;
                            }
                            if (valid0) {
                              if (data.cornerWall !== void 0) {
                                const _errs16 = errors;
                                if (!validate72(data.cornerWall, { instancePath: instancePath + "/cornerWall", parentData: data, parentDataProperty: "cornerWall", rootData, dynamicAnchors })) {
                                  vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                                  errors = vErrors.length;
                                }
                                var valid0 = _errs16 === errors;
                              } else {
                                var valid0 = true;
                              }
                              if (valid0) {
                                if (data.cellWall !== void 0) {
                                  const _errs17 = errors;
                                  if (!validate72(data.cellWall, { instancePath: instancePath + "/cellWall", parentData: data, parentDataProperty: "cellWall", rootData, dynamicAnchors })) {
                                    vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                                    errors = vErrors.length;
                                  }
                                  var valid0 = _errs17 === errors;
                                } else {
                                  var valid0 = true;
                                }
                                if (valid0) {
                                  if (data.closedWall !== void 0) {
                                    const _errs18 = errors;
                                    if (!validate72(data.closedWall, { instancePath: instancePath + "/closedWall", parentData: data, parentDataProperty: "closedWall", rootData, dynamicAnchors })) {
                                      vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                                      errors = vErrors.length;
                                    }
                                    var valid0 = _errs18 === errors;
                                  } else {
                                    var valid0 = true;
                                  }
                                  if (valid0) {
                                    if (data.chordError !== void 0) {
                                      const _errs19 = errors;
                                      if (!validate72(data.chordError, { instancePath: instancePath + "/chordError", parentData: data, parentDataProperty: "chordError", rootData, dynamicAnchors })) {
                                        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                                        errors = vErrors.length;
                                      }
                                      var valid0 = _errs19 === errors;
                                    } else {
                                      var valid0 = true;
                                    }
                                    if (valid0) {
                                      if (data.lipRating !== void 0) {
                                        const _errs20 = errors;
                                        if (!validate96(data.lipRating, { instancePath: instancePath + "/lipRating", parentData: data, parentDataProperty: "lipRating", rootData, dynamicAnchors })) {
                                          vErrors = vErrors === null ? validate96.errors : vErrors.concat(validate96.errors);
                                          errors = vErrors.length;
                                        }
                                        var valid0 = _errs20 === errors;
                                      } else {
                                        var valid0 = true;
                                      }
                                      if (valid0) {
                                        if (data.lipSource !== void 0) {
                                          const _errs21 = errors;
                                          if (!validate65(data.lipSource, { instancePath: instancePath + "/lipSource", parentData: data, parentDataProperty: "lipSource", rootData, dynamicAnchors })) {
                                            vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
                                            errors = vErrors.length;
                                          }
                                          var valid0 = _errs21 === errors;
                                        } else {
                                          var valid0 = true;
                                        }
                                        if (valid0) {
                                          if (data.ratedNut !== void 0) {
                                            const _errs22 = errors;
                                            if (!validate99(data.ratedNut, { instancePath: instancePath + "/ratedNut", parentData: data, parentDataProperty: "ratedNut", rootData, dynamicAnchors })) {
                                              vErrors = vErrors === null ? validate99.errors : vErrors.concat(validate99.errors);
                                              errors = vErrors.length;
                                            }
                                            var valid0 = _errs22 === errors;
                                          } else {
                                            var valid0 = true;
                                          }
                                          if (valid0) {
                                            if (data.torques !== void 0) {
                                              const _errs23 = errors;
                                              if (!validate102(data.torques, { instancePath: instancePath + "/torques", parentData: data, parentDataProperty: "torques", rootData, dynamicAnchors })) {
                                                vErrors = vErrors === null ? validate102.errors : vErrors.concat(validate102.errors);
                                                errors = vErrors.length;
                                              }
                                              var valid0 = _errs23 === errors;
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
    } else {
      validate68.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate68.errors = vErrors;
  return errors === 0;
}
validate68.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var schema40 = { "enum": ["A", "B", "C", "D"], "description": "A face of a bar: A looks along +y of the section, B +z, C \u2212y, D \u2212z." };
function validate112(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate112.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (!(data === "A" || data === "B" || data === "C" || data === "D")) {
    validate112.errors = [{ instancePath, schemaPath: "#/enum", keyword: "enum", params: { allowedValues: schema40.enum }, message: "must be equal to one of the allowed values" }];
    return false;
  }
  validate112.errors = vErrors;
  return errors === 0;
}
validate112.evaluated = { "dynamicProps": false, "dynamicItems": false };
function validate108(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate108.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.kind === void 0 && (missing0 = "kind") || data.name === void 0 && (missing0 = "name") || data.series === void 0 && (missing0 = "series") || data.columns === void 0 && (missing0 = "columns") || data.rows === void 0 && (missing0 = "rows")) {
        validate108.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "kind" || key0 === "name" || key0 === "about" || key0 === "series" || key0 === "columns" || key0 === "rows" || key0 === "closed")) {
            validate108.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.kind !== void 0) {
            const _errs2 = errors;
            if ("generated" !== data.kind) {
              validate108.errors = [{ instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/const", keyword: "const", params: { allowedValue: "generated" }, message: "must be equal to constant" }];
              return false;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.name !== void 0) {
              const _errs3 = errors;
              if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.about !== void 0) {
                const _errs4 = errors;
                if (!validate70(data.about, { instancePath: instancePath + "/about", parentData: data, parentDataProperty: "about", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate70.errors : vErrors.concat(validate70.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs4 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.series !== void 0) {
                  const _errs5 = errors;
                  if (!validate78(data.series, { instancePath: instancePath + "/series", parentData: data, parentDataProperty: "series", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate78.errors : vErrors.concat(validate78.errors);
                    errors = vErrors.length;
                  }
                  var valid0 = _errs5 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.columns !== void 0) {
                    let data4 = data.columns;
                    const _errs6 = errors;
                    if (!(typeof data4 == "number" && (!(data4 % 1) && !isNaN(data4)) && isFinite(data4))) {
                      validate108.errors = [{ instancePath: instancePath + "/columns", schemaPath: "#/properties/columns/type", keyword: "type", params: { type: "integer" }, message: "must be integer" }];
                      return false;
                    }
                    if (errors === _errs6) {
                      if (typeof data4 == "number" && isFinite(data4)) {
                        if (data4 > 8 || isNaN(data4)) {
                          validate108.errors = [{ instancePath: instancePath + "/columns", schemaPath: "#/properties/columns/maximum", keyword: "maximum", params: { comparison: "<=", limit: 8 }, message: "must be <= 8" }];
                          return false;
                        } else {
                          if (data4 < 1 || isNaN(data4)) {
                            validate108.errors = [{ instancePath: instancePath + "/columns", schemaPath: "#/properties/columns/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" }];
                            return false;
                          }
                        }
                      }
                    }
                    var valid0 = _errs6 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.rows !== void 0) {
                      let data5 = data.rows;
                      const _errs8 = errors;
                      if (!(typeof data5 == "number" && (!(data5 % 1) && !isNaN(data5)) && isFinite(data5))) {
                        validate108.errors = [{ instancePath: instancePath + "/rows", schemaPath: "#/properties/rows/type", keyword: "type", params: { type: "integer" }, message: "must be integer" }];
                        return false;
                      }
                      if (errors === _errs8) {
                        if (typeof data5 == "number" && isFinite(data5)) {
                          if (data5 > 8 || isNaN(data5)) {
                            validate108.errors = [{ instancePath: instancePath + "/rows", schemaPath: "#/properties/rows/maximum", keyword: "maximum", params: { comparison: "<=", limit: 8 }, message: "must be <= 8" }];
                            return false;
                          } else {
                            if (data5 < 1 || isNaN(data5)) {
                              validate108.errors = [{ instancePath: instancePath + "/rows", schemaPath: "#/properties/rows/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" }];
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
                      if (data.closed !== void 0) {
                        let data6 = data.closed;
                        const _errs10 = errors;
                        if (errors === _errs10) {
                          if (Array.isArray(data6)) {
                            if (data6.length > 4) {
                              validate108.errors = [{ instancePath: instancePath + "/closed", schemaPath: "#/properties/closed/maxItems", keyword: "maxItems", params: { limit: 4 }, message: "must NOT have more than 4 items" }];
                              return false;
                            } else {
                              if (data6.length < 1) {
                                validate108.errors = [{ instancePath: instancePath + "/closed", schemaPath: "#/properties/closed/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" }];
                                return false;
                              } else {
                                var valid1 = true;
                                const len0 = data6.length;
                                for (let i0 = 0; i0 < len0; i0++) {
                                  const _errs12 = errors;
                                  if (!validate112(data6[i0], { instancePath: instancePath + "/closed/" + i0, parentData: data6, parentDataProperty: i0, rootData, dynamicAnchors })) {
                                    vErrors = vErrors === null ? validate112.errors : vErrors.concat(validate112.errors);
                                    errors = vErrors.length;
                                  }
                                  var valid1 = _errs12 === errors;
                                  if (!valid1) {
                                    break;
                                  }
                                }
                              }
                            }
                          } else {
                            validate108.errors = [{ instancePath: instancePath + "/closed", schemaPath: "#/properties/closed/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                            return false;
                          }
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
      validate108.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate108.errors = vErrors;
  return errors === 0;
}
validate108.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var schema41 = { "type": "object", "required": ["kind", "name", "pitch", "slotSize", "weight", "material", "stockLength", "lipRating", "lipSource", "outline", "slots"], "additionalProperties": false, "description": "A cross-section drawn corner by corner, [y, z] about the middle of its envelope: y out of face A, z out of face B.", "properties": { "kind": { "const": "drawn" }, "name": { "$ref": "#/$defs/partName" }, "about": { "$ref": "#/$defs/about" }, "pitch": { "$ref": "#/$defs/length", "description": "Distance between slots, or side of a single bar." }, "slotSize": { "$ref": "#/$defs/slotSize" }, "weight": { "$ref": "#/$defs/weight" }, "material": { "$ref": "#/$defs/reference" }, "stockLength": { "$ref": "#/$defs/length" }, "lipRating": { "$ref": "#/$defs/force", "description": "Tension a nut may put on the lips." }, "lipSource": { "$ref": "#/$defs/source" }, "torques": { "$ref": "#/$defs/torques" }, "outline": { "$ref": "#/$defs/polygon", "description": "Outer boundary, slots included." }, "holes": { "type": "array", "items": { "$ref": "#/$defs/polygon" }, "description": "Bores and hollows as polygons." }, "slots": { "type": "array", "items": { "$ref": "#/$defs/drawnSlot" }, "description": "The slots the outline draws." }, "bores": { "type": "array", "items": { "$ref": "#/$defs/drawnBore" }, "description": "Holes that can be tapped at a cut end." } } };
function validate125(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate125.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (Array.isArray(data)) {
      if (data.length > 5e3) {
        validate125.errors = [{ instancePath, schemaPath: "#/maxItems", keyword: "maxItems", params: { limit: 5e3 }, message: "must NOT have more than 5000 items" }];
        return false;
      } else {
        if (data.length < 3) {
          validate125.errors = [{ instancePath, schemaPath: "#/minItems", keyword: "minItems", params: { limit: 3 }, message: "must NOT have fewer than 3 items" }];
          return false;
        } else {
          var valid0 = true;
          const len0 = data.length;
          for (let i0 = 0; i0 < len0; i0++) {
            const _errs1 = errors;
            if (!validate99(data[i0], { instancePath: instancePath + "/" + i0, parentData: data, parentDataProperty: i0, rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate99.errors : vErrors.concat(validate99.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs1 === errors;
            if (!valid0) {
              break;
            }
          }
        }
      }
    } else {
      validate125.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
      return false;
    }
  }
  validate125.errors = vErrors;
  return errors === 0;
}
validate125.evaluated = { "items": true, "dynamicProps": false, "dynamicItems": false };
function validate129(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate129.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.face === void 0 && (missing0 = "face") || data.across === void 0 && (missing0 = "across") || data.opening === void 0 && (missing0 = "opening") || data.lip === void 0 && (missing0 = "lip") || data.depth === void 0 && (missing0 = "depth") || data.cavity === void 0 && (missing0 = "cavity")) {
        validate129.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "face" || key0 === "across" || key0 === "opening" || key0 === "lip" || key0 === "depth" || key0 === "cavity" || key0 === "closed")) {
            validate129.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.face !== void 0) {
            const _errs2 = errors;
            if (!validate112(data.face, { instancePath: instancePath + "/face", parentData: data, parentDataProperty: "face", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate112.errors : vErrors.concat(validate112.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.across !== void 0) {
              const _errs3 = errors;
              if (!validate72(data.across, { instancePath: instancePath + "/across", parentData: data, parentDataProperty: "across", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.opening !== void 0) {
                const _errs4 = errors;
                if (!validate72(data.opening, { instancePath: instancePath + "/opening", parentData: data, parentDataProperty: "opening", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs4 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.lip !== void 0) {
                  const _errs5 = errors;
                  if (!validate72(data.lip, { instancePath: instancePath + "/lip", parentData: data, parentDataProperty: "lip", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                    errors = vErrors.length;
                  }
                  var valid0 = _errs5 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.depth !== void 0) {
                    const _errs6 = errors;
                    if (!validate72(data.depth, { instancePath: instancePath + "/depth", parentData: data, parentDataProperty: "depth", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                      errors = vErrors.length;
                    }
                    var valid0 = _errs6 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.cavity !== void 0) {
                      const _errs7 = errors;
                      if (!validate72(data.cavity, { instancePath: instancePath + "/cavity", parentData: data, parentDataProperty: "cavity", rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                        errors = vErrors.length;
                      }
                      var valid0 = _errs7 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.closed !== void 0) {
                        const _errs8 = errors;
                        if (typeof data.closed !== "boolean") {
                          validate129.errors = [{ instancePath: instancePath + "/closed", schemaPath: "#/properties/closed/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" }];
                          return false;
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
        }
      }
    } else {
      validate129.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate129.errors = vErrors;
  return errors === 0;
}
validate129.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
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
      if (data.at === void 0 && (missing0 = "at") || data.diameter === void 0 && (missing0 = "diameter") || data.thread === void 0 && (missing0 = "thread")) {
        validate137.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "at" || key0 === "diameter" || key0 === "thread")) {
            validate137.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.at !== void 0) {
            const _errs2 = errors;
            if (!validate99(data.at, { instancePath: instancePath + "/at", parentData: data, parentDataProperty: "at", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate99.errors : vErrors.concat(validate99.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.diameter !== void 0) {
              const _errs3 = errors;
              if (!validate72(data.diameter, { instancePath: instancePath + "/diameter", parentData: data, parentDataProperty: "diameter", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.thread !== void 0) {
                const _errs4 = errors;
                if (!validate89(data.thread, { instancePath: instancePath + "/thread", parentData: data, parentDataProperty: "thread", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate89.errors : vErrors.concat(validate89.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs4 === errors;
              } else {
                var valid0 = true;
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
      if (data.kind === void 0 && (missing0 = "kind") || data.name === void 0 && (missing0 = "name") || data.pitch === void 0 && (missing0 = "pitch") || data.slotSize === void 0 && (missing0 = "slotSize") || data.weight === void 0 && (missing0 = "weight") || data.material === void 0 && (missing0 = "material") || data.stockLength === void 0 && (missing0 = "stockLength") || data.lipRating === void 0 && (missing0 = "lipRating") || data.lipSource === void 0 && (missing0 = "lipSource") || data.outline === void 0 && (missing0 = "outline") || data.slots === void 0 && (missing0 = "slots")) {
        validate114.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!func1.call(schema41.properties, key0)) {
            validate114.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.kind !== void 0) {
            const _errs2 = errors;
            if ("drawn" !== data.kind) {
              validate114.errors = [{ instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/const", keyword: "const", params: { allowedValue: "drawn" }, message: "must be equal to constant" }];
              return false;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.name !== void 0) {
              const _errs3 = errors;
              if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.about !== void 0) {
                const _errs4 = errors;
                if (!validate70(data.about, { instancePath: instancePath + "/about", parentData: data, parentDataProperty: "about", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate70.errors : vErrors.concat(validate70.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs4 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.pitch !== void 0) {
                  const _errs5 = errors;
                  if (!validate72(data.pitch, { instancePath: instancePath + "/pitch", parentData: data, parentDataProperty: "pitch", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                    errors = vErrors.length;
                  }
                  var valid0 = _errs5 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.slotSize !== void 0) {
                    const _errs6 = errors;
                    if (!validate74(data.slotSize, { instancePath: instancePath + "/slotSize", parentData: data, parentDataProperty: "slotSize", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
                      errors = vErrors.length;
                    }
                    var valid0 = _errs6 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.weight !== void 0) {
                      const _errs7 = errors;
                      if (!validate76(data.weight, { instancePath: instancePath + "/weight", parentData: data, parentDataProperty: "weight", rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors);
                        errors = vErrors.length;
                      }
                      var valid0 = _errs7 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.material !== void 0) {
                        const _errs8 = errors;
                        if (!validate78(data.material, { instancePath: instancePath + "/material", parentData: data, parentDataProperty: "material", rootData, dynamicAnchors })) {
                          vErrors = vErrors === null ? validate78.errors : vErrors.concat(validate78.errors);
                          errors = vErrors.length;
                        }
                        var valid0 = _errs8 === errors;
                      } else {
                        var valid0 = true;
                      }
                      if (valid0) {
                        if (data.stockLength !== void 0) {
                          const _errs9 = errors;
                          if (!validate72(data.stockLength, { instancePath: instancePath + "/stockLength", parentData: data, parentDataProperty: "stockLength", rootData, dynamicAnchors })) {
                            vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                            errors = vErrors.length;
                          }
                          var valid0 = _errs9 === errors;
                        } else {
                          var valid0 = true;
                        }
                        if (valid0) {
                          if (data.lipRating !== void 0) {
                            const _errs10 = errors;
                            if (!validate96(data.lipRating, { instancePath: instancePath + "/lipRating", parentData: data, parentDataProperty: "lipRating", rootData, dynamicAnchors })) {
                              vErrors = vErrors === null ? validate96.errors : vErrors.concat(validate96.errors);
                              errors = vErrors.length;
                            }
                            var valid0 = _errs10 === errors;
                          } else {
                            var valid0 = true;
                          }
                          if (valid0) {
                            if (data.lipSource !== void 0) {
                              const _errs11 = errors;
                              if (!validate65(data.lipSource, { instancePath: instancePath + "/lipSource", parentData: data, parentDataProperty: "lipSource", rootData, dynamicAnchors })) {
                                vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
                                errors = vErrors.length;
                              }
                              var valid0 = _errs11 === errors;
                            } else {
                              var valid0 = true;
                            }
                            if (valid0) {
                              if (data.torques !== void 0) {
                                const _errs12 = errors;
                                if (!validate102(data.torques, { instancePath: instancePath + "/torques", parentData: data, parentDataProperty: "torques", rootData, dynamicAnchors })) {
                                  vErrors = vErrors === null ? validate102.errors : vErrors.concat(validate102.errors);
                                  errors = vErrors.length;
                                }
                                var valid0 = _errs12 === errors;
                              } else {
                                var valid0 = true;
                              }
                              if (valid0) {
                                if (data.outline !== void 0) {
                                  const _errs13 = errors;
                                  if (!validate125(data.outline, { instancePath: instancePath + "/outline", parentData: data, parentDataProperty: "outline", rootData, dynamicAnchors })) {
                                    vErrors = vErrors === null ? validate125.errors : vErrors.concat(validate125.errors);
                                    errors = vErrors.length;
                                  }
                                  var valid0 = _errs13 === errors;
                                } else {
                                  var valid0 = true;
                                }
                                if (valid0) {
                                  if (data.holes !== void 0) {
                                    let data12 = data.holes;
                                    const _errs14 = errors;
                                    if (errors === _errs14) {
                                      if (Array.isArray(data12)) {
                                        var valid1 = true;
                                        const len0 = data12.length;
                                        for (let i0 = 0; i0 < len0; i0++) {
                                          const _errs16 = errors;
                                          if (!validate125(data12[i0], { instancePath: instancePath + "/holes/" + i0, parentData: data12, parentDataProperty: i0, rootData, dynamicAnchors })) {
                                            vErrors = vErrors === null ? validate125.errors : vErrors.concat(validate125.errors);
                                            errors = vErrors.length;
                                          }
                                          var valid1 = _errs16 === errors;
                                          if (!valid1) {
                                            break;
                                          }
                                        }
                                      } else {
                                        validate114.errors = [{ instancePath: instancePath + "/holes", schemaPath: "#/properties/holes/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                        return false;
                                      }
                                    }
                                    var valid0 = _errs14 === errors;
                                  } else {
                                    var valid0 = true;
                                  }
                                  if (valid0) {
                                    if (data.slots !== void 0) {
                                      let data14 = data.slots;
                                      const _errs17 = errors;
                                      if (errors === _errs17) {
                                        if (Array.isArray(data14)) {
                                          var valid2 = true;
                                          const len1 = data14.length;
                                          for (let i1 = 0; i1 < len1; i1++) {
                                            const _errs19 = errors;
                                            if (!validate129(data14[i1], { instancePath: instancePath + "/slots/" + i1, parentData: data14, parentDataProperty: i1, rootData, dynamicAnchors })) {
                                              vErrors = vErrors === null ? validate129.errors : vErrors.concat(validate129.errors);
                                              errors = vErrors.length;
                                            }
                                            var valid2 = _errs19 === errors;
                                            if (!valid2) {
                                              break;
                                            }
                                          }
                                        } else {
                                          validate114.errors = [{ instancePath: instancePath + "/slots", schemaPath: "#/properties/slots/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                          return false;
                                        }
                                      }
                                      var valid0 = _errs17 === errors;
                                    } else {
                                      var valid0 = true;
                                    }
                                    if (valid0) {
                                      if (data.bores !== void 0) {
                                        let data16 = data.bores;
                                        const _errs20 = errors;
                                        if (errors === _errs20) {
                                          if (Array.isArray(data16)) {
                                            var valid3 = true;
                                            const len2 = data16.length;
                                            for (let i2 = 0; i2 < len2; i2++) {
                                              const _errs22 = errors;
                                              if (!validate137(data16[i2], { instancePath: instancePath + "/bores/" + i2, parentData: data16, parentDataProperty: i2, rootData, dynamicAnchors })) {
                                                vErrors = vErrors === null ? validate137.errors : vErrors.concat(validate137.errors);
                                                errors = vErrors.length;
                                              }
                                              var valid3 = _errs22 === errors;
                                              if (!valid3) {
                                                break;
                                              }
                                            }
                                          } else {
                                            validate114.errors = [{ instancePath: instancePath + "/bores", schemaPath: "#/properties/bores/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
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
      const tag0 = data.kind;
      if (typeof tag0 == "string") {
        if (tag0 === "generated") {
          if (!validate108(data, { instancePath, parentData, parentDataProperty, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate108.errors : vErrors.concat(validate108.errors);
            errors = vErrors.length;
          }
          var props0 = true;
        } else if (tag0 === "drawn") {
          if (!validate114(data, { instancePath, parentData, parentDataProperty, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate114.errors : vErrors.concat(validate114.errors);
            errors = vErrors.length;
          }
          if (props0 !== true) {
            props0 = true;
          }
        } else {
          validate107.errors = [{ instancePath, schemaPath: "#/discriminator", keyword: "discriminator", params: { error: "mapping", tag: "kind", tagValue: tag0 }, message: 'value of tag "kind" must be in oneOf' }];
          return false;
        }
      } else {
        validate107.errors = [{ instancePath, schemaPath: "#/discriminator", keyword: "discriminator", params: { error: "tag", tag: "kind", tagValue: tag0 }, message: 'tag "kind" must be string' }];
        return false;
      }
    } else {
      validate107.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate107.errors = vErrors;
  evaluated0.props = props0;
  return errors === 0;
}
validate107.evaluated = { "dynamicProps": true, "dynamicItems": false };
var schema46 = { "type": "object", "required": ["kind", "name", "slotSize", "mass", "legs", "width", "screw"], "additionalProperties": false, "description": "An angle in an inside corner. Leg a lies on the ending bar, leg b on the bar it meets.", "properties": { "kind": { "const": "bracket" }, "name": { "$ref": "#/$defs/partName" }, "about": { "$ref": "#/$defs/about" }, "slotSize": { "$ref": "#/$defs/slotSize" }, "mass": { "$ref": "#/$defs/massValue", "description": "Without screws and nuts." }, "tested": { "$ref": "#/$defs/tested" }, "legs": { "type": "object", "required": ["a", "b"], "additionalProperties": false, "description": "Leg a lies on the ending bar, leg b on the bar it meets.", "properties": { "a": { "$ref": "#/$defs/legSpec" }, "b": { "$ref": "#/$defs/legSpec" } } }, "width": { "$ref": "#/$defs/length", "description": "Along the corner." }, "gussets": { "type": "integer", "minimum": 0, "maximum": 2, "description": "Side walls between the legs; standard 0." }, "gussetThickness": { "$ref": "#/$defs/length", "description": "Thickness of a side wall." }, "lugs": { "type": "boolean", "description": "Lugs that fill the slot and resist turning; standard false." }, "screw": { "$ref": "#/$defs/reference", "description": "Name of its screw in stock.", "examples": ["M8x16"] } } };
var schema47 = { "type": ["number", "string"], "maxLength": 64, "description": "A mass: a number in kg (or lb), or a string with its unit.", "x-quantity": "mass", "examples": [0.08, "80 g"] };
function validate150(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate150.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (!(typeof data == "number" && isFinite(data)) && typeof data !== "string") {
    validate150.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: schema47.type }, message: "must be number,string" }];
    return false;
  }
  if (errors === 0) {
    if (typeof data === "string") {
      if (func2(data) > 64) {
        validate150.errors = [{ instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" }];
        return false;
      }
    }
  }
  validate150.errors = vErrors;
  return errors === 0;
}
validate150.evaluated = { "dynamicProps": false, "dynamicItems": false };
var schema49 = { "type": ["number", "string"], "maxLength": 64, "description": "A rotational stiffness: a number in N\xB7m/rad (or lbf\xB7in/rad), or a string with its unit.", "x-quantity": "rotationalStiffness", "examples": [8e3, "8 kN\xB7m/rad"] };
function validate153(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate153.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (!(typeof data == "number" && isFinite(data)) && typeof data !== "string") {
    validate153.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: schema49.type }, message: "must be number,string" }];
    return false;
  }
  if (errors === 0) {
    if (typeof data === "string") {
      if (func2(data) > 64) {
        validate153.errors = [{ instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" }];
        return false;
      }
    }
  }
  validate153.errors = vErrors;
  return errors === 0;
}
validate153.evaluated = { "dynamicProps": false, "dynamicItems": false };
function validate152(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate152.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.reference === void 0 && (missing0 = "reference")) {
        validate152.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "rotationalStiffness" || key0 === "slip" || key0 === "moment" || key0 === "reference")) {
            validate152.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.rotationalStiffness !== void 0) {
            const _errs2 = errors;
            if (!validate153(data.rotationalStiffness, { instancePath: instancePath + "/rotationalStiffness", parentData: data, parentDataProperty: "rotationalStiffness", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate153.errors : vErrors.concat(validate153.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.slip !== void 0) {
              const _errs3 = errors;
              if (!validate96(data.slip, { instancePath: instancePath + "/slip", parentData: data, parentDataProperty: "slip", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate96.errors : vErrors.concat(validate96.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.moment !== void 0) {
                const _errs4 = errors;
                if (!validate103(data.moment, { instancePath: instancePath + "/moment", parentData: data, parentDataProperty: "moment", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs4 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.reference !== void 0) {
                  const _errs5 = errors;
                  if (!validate65(data.reference, { instancePath: instancePath + "/reference", parentData: data, parentDataProperty: "reference", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
                    errors = vErrors.length;
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
      validate152.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate152.errors = vErrors;
  return errors === 0;
}
validate152.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var pattern3 = new RegExp("^[a-z][a-z0-9-]*$", "u");
function validate162(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate162.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.id === void 0 && (missing0 = "id") || data.at === void 0 && (missing0 = "at") || data.diameter === void 0 && (missing0 = "diameter")) {
        validate162.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "id" || key0 === "at" || key0 === "diameter")) {
            validate162.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.id !== void 0) {
            let data0 = data.id;
            const _errs2 = errors;
            if (errors === _errs2) {
              if (typeof data0 === "string") {
                if (func2(data0) > 20) {
                  validate162.errors = [{ instancePath: instancePath + "/id", schemaPath: "#/properties/id/maxLength", keyword: "maxLength", params: { limit: 20 }, message: "must NOT have more than 20 characters" }];
                  return false;
                } else {
                  if (!pattern3.test(data0)) {
                    validate162.errors = [{ instancePath: instancePath + "/id", schemaPath: "#/properties/id/pattern", keyword: "pattern", params: { pattern: "^[a-z][a-z0-9-]*$" }, message: 'must match pattern "^[a-z][a-z0-9-]*$"' }];
                    return false;
                  }
                }
              } else {
                validate162.errors = [{ instancePath: instancePath + "/id", schemaPath: "#/properties/id/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                return false;
              }
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.at !== void 0) {
              const _errs4 = errors;
              if (!validate99(data.at, { instancePath: instancePath + "/at", parentData: data, parentDataProperty: "at", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate99.errors : vErrors.concat(validate99.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs4 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.diameter !== void 0) {
                const _errs5 = errors;
                if (!validate72(data.diameter, { instancePath: instancePath + "/diameter", parentData: data, parentDataProperty: "diameter", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs5 === errors;
              } else {
                var valid0 = true;
              }
            }
          }
        }
      }
    } else {
      validate162.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate162.errors = vErrors;
  return errors === 0;
}
validate162.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
function validate159(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate159.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.length === void 0 && (missing0 = "length") || data.thickness === void 0 && (missing0 = "thickness") || data.holes === void 0 && (missing0 = "holes")) {
        validate159.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "length" || key0 === "thickness" || key0 === "holes")) {
            validate159.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.length !== void 0) {
            const _errs2 = errors;
            if (!validate72(data.length, { instancePath: instancePath + "/length", parentData: data, parentDataProperty: "length", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.thickness !== void 0) {
              const _errs3 = errors;
              if (!validate72(data.thickness, { instancePath: instancePath + "/thickness", parentData: data, parentDataProperty: "thickness", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.holes !== void 0) {
                let data2 = data.holes;
                const _errs4 = errors;
                if (errors === _errs4) {
                  if (Array.isArray(data2)) {
                    if (data2.length < 1) {
                      validate159.errors = [{ instancePath: instancePath + "/holes", schemaPath: "#/properties/holes/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" }];
                      return false;
                    } else {
                      var valid1 = true;
                      const len0 = data2.length;
                      for (let i0 = 0; i0 < len0; i0++) {
                        const _errs6 = errors;
                        if (!validate162(data2[i0], { instancePath: instancePath + "/holes/" + i0, parentData: data2, parentDataProperty: i0, rootData, dynamicAnchors })) {
                          vErrors = vErrors === null ? validate162.errors : vErrors.concat(validate162.errors);
                          errors = vErrors.length;
                        }
                        var valid1 = _errs6 === errors;
                        if (!valid1) {
                          break;
                        }
                      }
                    }
                  } else {
                    validate159.errors = [{ instancePath: instancePath + "/holes", schemaPath: "#/properties/holes/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                    return false;
                  }
                }
                var valid0 = _errs4 === errors;
              } else {
                var valid0 = true;
              }
            }
          }
        }
      }
    } else {
      validate159.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate159.errors = vErrors;
  return errors === 0;
}
validate159.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
function validate146(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate146.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.kind === void 0 && (missing0 = "kind") || data.name === void 0 && (missing0 = "name") || data.slotSize === void 0 && (missing0 = "slotSize") || data.mass === void 0 && (missing0 = "mass") || data.legs === void 0 && (missing0 = "legs") || data.width === void 0 && (missing0 = "width") || data.screw === void 0 && (missing0 = "screw")) {
        validate146.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!func1.call(schema46.properties, key0)) {
            validate146.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.kind !== void 0) {
            const _errs2 = errors;
            if ("bracket" !== data.kind) {
              validate146.errors = [{ instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/const", keyword: "const", params: { allowedValue: "bracket" }, message: "must be equal to constant" }];
              return false;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.name !== void 0) {
              const _errs3 = errors;
              if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.about !== void 0) {
                const _errs4 = errors;
                if (!validate70(data.about, { instancePath: instancePath + "/about", parentData: data, parentDataProperty: "about", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate70.errors : vErrors.concat(validate70.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs4 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.slotSize !== void 0) {
                  const _errs5 = errors;
                  if (!validate74(data.slotSize, { instancePath: instancePath + "/slotSize", parentData: data, parentDataProperty: "slotSize", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
                    errors = vErrors.length;
                  }
                  var valid0 = _errs5 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.mass !== void 0) {
                    const _errs6 = errors;
                    if (!validate150(data.mass, { instancePath: instancePath + "/mass", parentData: data, parentDataProperty: "mass", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate150.errors : vErrors.concat(validate150.errors);
                      errors = vErrors.length;
                    }
                    var valid0 = _errs6 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.tested !== void 0) {
                      const _errs7 = errors;
                      if (!validate152(data.tested, { instancePath: instancePath + "/tested", parentData: data, parentDataProperty: "tested", rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate152.errors : vErrors.concat(validate152.errors);
                        errors = vErrors.length;
                      }
                      var valid0 = _errs7 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.legs !== void 0) {
                        let data6 = data.legs;
                        const _errs8 = errors;
                        if (errors === _errs8) {
                          if (data6 && typeof data6 == "object" && !Array.isArray(data6)) {
                            let missing1;
                            if (data6.a === void 0 && (missing1 = "a") || data6.b === void 0 && (missing1 = "b")) {
                              validate146.errors = [{ instancePath: instancePath + "/legs", schemaPath: "#/properties/legs/required", keyword: "required", params: { missingProperty: missing1 }, message: "must have required property '" + missing1 + "'" }];
                              return false;
                            } else {
                              const _errs10 = errors;
                              for (const key1 in data6) {
                                if (!(key1 === "a" || key1 === "b")) {
                                  validate146.errors = [{ instancePath: instancePath + "/legs", schemaPath: "#/properties/legs/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties" }];
                                  return false;
                                  break;
                                }
                              }
                              if (_errs10 === errors) {
                                if (data6.a !== void 0) {
                                  const _errs11 = errors;
                                  if (!validate159(data6.a, { instancePath: instancePath + "/legs/a", parentData: data6, parentDataProperty: "a", rootData, dynamicAnchors })) {
                                    vErrors = vErrors === null ? validate159.errors : vErrors.concat(validate159.errors);
                                    errors = vErrors.length;
                                  }
                                  var valid1 = _errs11 === errors;
                                } else {
                                  var valid1 = true;
                                }
                                if (valid1) {
                                  if (data6.b !== void 0) {
                                    const _errs12 = errors;
                                    if (!validate159(data6.b, { instancePath: instancePath + "/legs/b", parentData: data6, parentDataProperty: "b", rootData, dynamicAnchors })) {
                                      vErrors = vErrors === null ? validate159.errors : vErrors.concat(validate159.errors);
                                      errors = vErrors.length;
                                    }
                                    var valid1 = _errs12 === errors;
                                  } else {
                                    var valid1 = true;
                                  }
                                }
                              }
                            }
                          } else {
                            validate146.errors = [{ instancePath: instancePath + "/legs", schemaPath: "#/properties/legs/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                            return false;
                          }
                        }
                        var valid0 = _errs8 === errors;
                      } else {
                        var valid0 = true;
                      }
                      if (valid0) {
                        if (data.width !== void 0) {
                          const _errs13 = errors;
                          if (!validate72(data.width, { instancePath: instancePath + "/width", parentData: data, parentDataProperty: "width", rootData, dynamicAnchors })) {
                            vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                            errors = vErrors.length;
                          }
                          var valid0 = _errs13 === errors;
                        } else {
                          var valid0 = true;
                        }
                        if (valid0) {
                          if (data.gussets !== void 0) {
                            let data10 = data.gussets;
                            const _errs14 = errors;
                            if (!(typeof data10 == "number" && (!(data10 % 1) && !isNaN(data10)) && isFinite(data10))) {
                              validate146.errors = [{ instancePath: instancePath + "/gussets", schemaPath: "#/properties/gussets/type", keyword: "type", params: { type: "integer" }, message: "must be integer" }];
                              return false;
                            }
                            if (errors === _errs14) {
                              if (typeof data10 == "number" && isFinite(data10)) {
                                if (data10 > 2 || isNaN(data10)) {
                                  validate146.errors = [{ instancePath: instancePath + "/gussets", schemaPath: "#/properties/gussets/maximum", keyword: "maximum", params: { comparison: "<=", limit: 2 }, message: "must be <= 2" }];
                                  return false;
                                } else {
                                  if (data10 < 0 || isNaN(data10)) {
                                    validate146.errors = [{ instancePath: instancePath + "/gussets", schemaPath: "#/properties/gussets/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" }];
                                    return false;
                                  }
                                }
                              }
                            }
                            var valid0 = _errs14 === errors;
                          } else {
                            var valid0 = true;
                          }
                          if (valid0) {
                            if (data.gussetThickness !== void 0) {
                              const _errs16 = errors;
                              if (!validate72(data.gussetThickness, { instancePath: instancePath + "/gussetThickness", parentData: data, parentDataProperty: "gussetThickness", rootData, dynamicAnchors })) {
                                vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                                errors = vErrors.length;
                              }
                              var valid0 = _errs16 === errors;
                            } else {
                              var valid0 = true;
                            }
                            if (valid0) {
                              if (data.lugs !== void 0) {
                                const _errs17 = errors;
                                if (typeof data.lugs !== "boolean") {
                                  validate146.errors = [{ instancePath: instancePath + "/lugs", schemaPath: "#/properties/lugs/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" }];
                                  return false;
                                }
                                var valid0 = _errs17 === errors;
                              } else {
                                var valid0 = true;
                              }
                              if (valid0) {
                                if (data.screw !== void 0) {
                                  const _errs19 = errors;
                                  if (!validate78(data.screw, { instancePath: instancePath + "/screw", parentData: data, parentDataProperty: "screw", rootData, dynamicAnchors })) {
                                    vErrors = vErrors === null ? validate78.errors : vErrors.concat(validate78.errors);
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
        }
      }
    } else {
      validate146.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate146.errors = vErrors;
  return errors === 0;
}
validate146.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var schema52 = { "type": "object", "required": ["kind", "name", "slotSize", "mass", "outline", "thickness", "holes", "screw"], "additionalProperties": false, "description": "A flat plate on faces that lie in one plane.", "properties": { "kind": { "const": "plate" }, "name": { "$ref": "#/$defs/partName" }, "about": { "$ref": "#/$defs/about" }, "slotSize": { "$ref": "#/$defs/slotSize" }, "mass": { "$ref": "#/$defs/massValue" }, "tested": { "$ref": "#/$defs/tested" }, "outline": { "$ref": "#/$defs/polygon", "description": "Corners [u, v]; [0, 0] is the point that fastenings place." }, "thickness": { "$ref": "#/$defs/length" }, "holes": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/holeSpec" }, "description": "Its screw holes." }, "screw": { "$ref": "#/$defs/reference" } } };
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
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.kind === void 0 && (missing0 = "kind") || data.name === void 0 && (missing0 = "name") || data.slotSize === void 0 && (missing0 = "slotSize") || data.mass === void 0 && (missing0 = "mass") || data.outline === void 0 && (missing0 = "outline") || data.thickness === void 0 && (missing0 = "thickness") || data.holes === void 0 && (missing0 = "holes") || data.screw === void 0 && (missing0 = "screw")) {
        validate171.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!func1.call(schema52.properties, key0)) {
            validate171.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.kind !== void 0) {
            const _errs2 = errors;
            if ("plate" !== data.kind) {
              validate171.errors = [{ instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/const", keyword: "const", params: { allowedValue: "plate" }, message: "must be equal to constant" }];
              return false;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.name !== void 0) {
              const _errs3 = errors;
              if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.about !== void 0) {
                const _errs4 = errors;
                if (!validate70(data.about, { instancePath: instancePath + "/about", parentData: data, parentDataProperty: "about", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate70.errors : vErrors.concat(validate70.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs4 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.slotSize !== void 0) {
                  const _errs5 = errors;
                  if (!validate74(data.slotSize, { instancePath: instancePath + "/slotSize", parentData: data, parentDataProperty: "slotSize", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
                    errors = vErrors.length;
                  }
                  var valid0 = _errs5 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.mass !== void 0) {
                    const _errs6 = errors;
                    if (!validate150(data.mass, { instancePath: instancePath + "/mass", parentData: data, parentDataProperty: "mass", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate150.errors : vErrors.concat(validate150.errors);
                      errors = vErrors.length;
                    }
                    var valid0 = _errs6 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.tested !== void 0) {
                      const _errs7 = errors;
                      if (!validate152(data.tested, { instancePath: instancePath + "/tested", parentData: data, parentDataProperty: "tested", rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate152.errors : vErrors.concat(validate152.errors);
                        errors = vErrors.length;
                      }
                      var valid0 = _errs7 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.outline !== void 0) {
                        const _errs8 = errors;
                        if (!validate125(data.outline, { instancePath: instancePath + "/outline", parentData: data, parentDataProperty: "outline", rootData, dynamicAnchors })) {
                          vErrors = vErrors === null ? validate125.errors : vErrors.concat(validate125.errors);
                          errors = vErrors.length;
                        }
                        var valid0 = _errs8 === errors;
                      } else {
                        var valid0 = true;
                      }
                      if (valid0) {
                        if (data.thickness !== void 0) {
                          const _errs9 = errors;
                          if (!validate72(data.thickness, { instancePath: instancePath + "/thickness", parentData: data, parentDataProperty: "thickness", rootData, dynamicAnchors })) {
                            vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                            errors = vErrors.length;
                          }
                          var valid0 = _errs9 === errors;
                        } else {
                          var valid0 = true;
                        }
                        if (valid0) {
                          if (data.holes !== void 0) {
                            let data8 = data.holes;
                            const _errs10 = errors;
                            if (errors === _errs10) {
                              if (Array.isArray(data8)) {
                                if (data8.length < 1) {
                                  validate171.errors = [{ instancePath: instancePath + "/holes", schemaPath: "#/properties/holes/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" }];
                                  return false;
                                } else {
                                  var valid1 = true;
                                  const len0 = data8.length;
                                  for (let i0 = 0; i0 < len0; i0++) {
                                    const _errs12 = errors;
                                    if (!validate162(data8[i0], { instancePath: instancePath + "/holes/" + i0, parentData: data8, parentDataProperty: i0, rootData, dynamicAnchors })) {
                                      vErrors = vErrors === null ? validate162.errors : vErrors.concat(validate162.errors);
                                      errors = vErrors.length;
                                    }
                                    var valid1 = _errs12 === errors;
                                    if (!valid1) {
                                      break;
                                    }
                                  }
                                }
                              } else {
                                validate171.errors = [{ instancePath: instancePath + "/holes", schemaPath: "#/properties/holes/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                return false;
                              }
                            }
                            var valid0 = _errs10 === errors;
                          } else {
                            var valid0 = true;
                          }
                          if (valid0) {
                            if (data.screw !== void 0) {
                              const _errs13 = errors;
                              if (!validate78(data.screw, { instancePath: instancePath + "/screw", parentData: data, parentDataProperty: "screw", rootData, dynamicAnchors })) {
                                vErrors = vErrors === null ? validate78.errors : vErrors.concat(validate78.errors);
                                errors = vErrors.length;
                              }
                              var valid0 = _errs13 === errors;
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
      validate171.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate171.errors = vErrors;
  return errors === 0;
}
validate171.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var schema53 = { "type": "object", "required": ["kind", "name", "slotSize", "mass", "screw", "depth", "keyFrom", "keyHole", "body"], "additionalProperties": false, "description": "Sits in a slot of the ending bar and pulls its cut end against the bar it meets.", "properties": { "kind": { "const": "end-fastener" }, "name": { "$ref": "#/$defs/partName" }, "about": { "$ref": "#/$defs/about" }, "slotSize": { "$ref": "#/$defs/slotSize" }, "mass": { "$ref": "#/$defs/massValue" }, "tested": { "$ref": "#/$defs/tested" }, "screw": { "$ref": "#/$defs/reference", "description": "Name of its screw in stock; the screw's length is what stands out of the cut end." }, "depth": { "$ref": "#/$defs/length", "description": "Screw axis below the face." }, "keyFrom": { "$ref": "#/$defs/length", "description": "Where the key enters, from the cut end." }, "keyHole": { "$ref": "#/$defs/length", "description": "Diameter of the hole the key enters by." }, "body": { "$ref": "#/$defs/length", "description": "Length of slot it fills from the end." }, "lugs": { "type": "boolean", "description": "A claw or lug keeps the end from turning; standard false." } } };
function validate181(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate181.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.kind === void 0 && (missing0 = "kind") || data.name === void 0 && (missing0 = "name") || data.slotSize === void 0 && (missing0 = "slotSize") || data.mass === void 0 && (missing0 = "mass") || data.screw === void 0 && (missing0 = "screw") || data.depth === void 0 && (missing0 = "depth") || data.keyFrom === void 0 && (missing0 = "keyFrom") || data.keyHole === void 0 && (missing0 = "keyHole") || data.body === void 0 && (missing0 = "body")) {
        validate181.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!func1.call(schema53.properties, key0)) {
            validate181.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.kind !== void 0) {
            const _errs2 = errors;
            if ("end-fastener" !== data.kind) {
              validate181.errors = [{ instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/const", keyword: "const", params: { allowedValue: "end-fastener" }, message: "must be equal to constant" }];
              return false;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.name !== void 0) {
              const _errs3 = errors;
              if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.about !== void 0) {
                const _errs4 = errors;
                if (!validate70(data.about, { instancePath: instancePath + "/about", parentData: data, parentDataProperty: "about", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate70.errors : vErrors.concat(validate70.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs4 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.slotSize !== void 0) {
                  const _errs5 = errors;
                  if (!validate74(data.slotSize, { instancePath: instancePath + "/slotSize", parentData: data, parentDataProperty: "slotSize", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
                    errors = vErrors.length;
                  }
                  var valid0 = _errs5 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.mass !== void 0) {
                    const _errs6 = errors;
                    if (!validate150(data.mass, { instancePath: instancePath + "/mass", parentData: data, parentDataProperty: "mass", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate150.errors : vErrors.concat(validate150.errors);
                      errors = vErrors.length;
                    }
                    var valid0 = _errs6 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.tested !== void 0) {
                      const _errs7 = errors;
                      if (!validate152(data.tested, { instancePath: instancePath + "/tested", parentData: data, parentDataProperty: "tested", rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate152.errors : vErrors.concat(validate152.errors);
                        errors = vErrors.length;
                      }
                      var valid0 = _errs7 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.screw !== void 0) {
                        const _errs8 = errors;
                        if (!validate78(data.screw, { instancePath: instancePath + "/screw", parentData: data, parentDataProperty: "screw", rootData, dynamicAnchors })) {
                          vErrors = vErrors === null ? validate78.errors : vErrors.concat(validate78.errors);
                          errors = vErrors.length;
                        }
                        var valid0 = _errs8 === errors;
                      } else {
                        var valid0 = true;
                      }
                      if (valid0) {
                        if (data.depth !== void 0) {
                          const _errs9 = errors;
                          if (!validate72(data.depth, { instancePath: instancePath + "/depth", parentData: data, parentDataProperty: "depth", rootData, dynamicAnchors })) {
                            vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                            errors = vErrors.length;
                          }
                          var valid0 = _errs9 === errors;
                        } else {
                          var valid0 = true;
                        }
                        if (valid0) {
                          if (data.keyFrom !== void 0) {
                            const _errs10 = errors;
                            if (!validate72(data.keyFrom, { instancePath: instancePath + "/keyFrom", parentData: data, parentDataProperty: "keyFrom", rootData, dynamicAnchors })) {
                              vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                              errors = vErrors.length;
                            }
                            var valid0 = _errs10 === errors;
                          } else {
                            var valid0 = true;
                          }
                          if (valid0) {
                            if (data.keyHole !== void 0) {
                              const _errs11 = errors;
                              if (!validate72(data.keyHole, { instancePath: instancePath + "/keyHole", parentData: data, parentDataProperty: "keyHole", rootData, dynamicAnchors })) {
                                vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                                errors = vErrors.length;
                              }
                              var valid0 = _errs11 === errors;
                            } else {
                              var valid0 = true;
                            }
                            if (valid0) {
                              if (data.body !== void 0) {
                                const _errs12 = errors;
                                if (!validate72(data.body, { instancePath: instancePath + "/body", parentData: data, parentDataProperty: "body", rootData, dynamicAnchors })) {
                                  vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                                  errors = vErrors.length;
                                }
                                var valid0 = _errs12 === errors;
                              } else {
                                var valid0 = true;
                              }
                              if (valid0) {
                                if (data.lugs !== void 0) {
                                  const _errs13 = errors;
                                  if (typeof data.lugs !== "boolean") {
                                    validate181.errors = [{ instancePath: instancePath + "/lugs", schemaPath: "#/properties/lugs/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" }];
                                    return false;
                                  }
                                  var valid0 = _errs13 === errors;
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
      validate181.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate181.errors = vErrors;
  return errors === 0;
}
validate181.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var schema54 = { "type": "object", "required": ["kind", "name", "slotSize", "mass", "screw", "head", "accessHole", "engagement"], "additionalProperties": false, "description": "A screw along the ending bar's axis into its tapped core bore.", "properties": { "kind": { "const": "end-screw" }, "name": { "$ref": "#/$defs/partName" }, "about": { "$ref": "#/$defs/about" }, "slotSize": { "$ref": "#/$defs/slotSize" }, "mass": { "$ref": "#/$defs/massValue" }, "tested": { "$ref": "#/$defs/tested" }, "screw": { "$ref": "#/$defs/reference" }, "head": { "enum": ["in-slot", "on-far-face"], "description": "Behind the lips of the crossing bar's slot, or on its far face." }, "accessHole": { "$ref": "#/$defs/length", "description": "Hole drilled across the crossing bar." }, "engagement": { "$ref": "#/$defs/length", "description": "Least thread engaged in the core." } } };
function validate192(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate192.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.kind === void 0 && (missing0 = "kind") || data.name === void 0 && (missing0 = "name") || data.slotSize === void 0 && (missing0 = "slotSize") || data.mass === void 0 && (missing0 = "mass") || data.screw === void 0 && (missing0 = "screw") || data.head === void 0 && (missing0 = "head") || data.accessHole === void 0 && (missing0 = "accessHole") || data.engagement === void 0 && (missing0 = "engagement")) {
        validate192.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!func1.call(schema54.properties, key0)) {
            validate192.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.kind !== void 0) {
            const _errs2 = errors;
            if ("end-screw" !== data.kind) {
              validate192.errors = [{ instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/const", keyword: "const", params: { allowedValue: "end-screw" }, message: "must be equal to constant" }];
              return false;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.name !== void 0) {
              const _errs3 = errors;
              if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.about !== void 0) {
                const _errs4 = errors;
                if (!validate70(data.about, { instancePath: instancePath + "/about", parentData: data, parentDataProperty: "about", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate70.errors : vErrors.concat(validate70.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs4 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.slotSize !== void 0) {
                  const _errs5 = errors;
                  if (!validate74(data.slotSize, { instancePath: instancePath + "/slotSize", parentData: data, parentDataProperty: "slotSize", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
                    errors = vErrors.length;
                  }
                  var valid0 = _errs5 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.mass !== void 0) {
                    const _errs6 = errors;
                    if (!validate150(data.mass, { instancePath: instancePath + "/mass", parentData: data, parentDataProperty: "mass", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate150.errors : vErrors.concat(validate150.errors);
                      errors = vErrors.length;
                    }
                    var valid0 = _errs6 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.tested !== void 0) {
                      const _errs7 = errors;
                      if (!validate152(data.tested, { instancePath: instancePath + "/tested", parentData: data, parentDataProperty: "tested", rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate152.errors : vErrors.concat(validate152.errors);
                        errors = vErrors.length;
                      }
                      var valid0 = _errs7 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.screw !== void 0) {
                        const _errs8 = errors;
                        if (!validate78(data.screw, { instancePath: instancePath + "/screw", parentData: data, parentDataProperty: "screw", rootData, dynamicAnchors })) {
                          vErrors = vErrors === null ? validate78.errors : vErrors.concat(validate78.errors);
                          errors = vErrors.length;
                        }
                        var valid0 = _errs8 === errors;
                      } else {
                        var valid0 = true;
                      }
                      if (valid0) {
                        if (data.head !== void 0) {
                          let data7 = data.head;
                          const _errs9 = errors;
                          if (!(data7 === "in-slot" || data7 === "on-far-face")) {
                            validate192.errors = [{ instancePath: instancePath + "/head", schemaPath: "#/properties/head/enum", keyword: "enum", params: { allowedValues: schema54.properties.head.enum }, message: "must be equal to one of the allowed values" }];
                            return false;
                          }
                          var valid0 = _errs9 === errors;
                        } else {
                          var valid0 = true;
                        }
                        if (valid0) {
                          if (data.accessHole !== void 0) {
                            const _errs10 = errors;
                            if (!validate72(data.accessHole, { instancePath: instancePath + "/accessHole", parentData: data, parentDataProperty: "accessHole", rootData, dynamicAnchors })) {
                              vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                              errors = vErrors.length;
                            }
                            var valid0 = _errs10 === errors;
                          } else {
                            var valid0 = true;
                          }
                          if (valid0) {
                            if (data.engagement !== void 0) {
                              const _errs11 = errors;
                              if (!validate72(data.engagement, { instancePath: instancePath + "/engagement", parentData: data, parentDataProperty: "engagement", rootData, dynamicAnchors })) {
                                vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                                errors = vErrors.length;
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
          }
        }
      }
    } else {
      validate192.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate192.errors = vErrors;
  return errors === 0;
}
validate192.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var schema55 = { "type": "object", "required": ["kind", "name", "slotSize", "mass", "screw"], "additionalProperties": false, "description": "Holds two bars that lie side by side, from slot to slot.", "properties": { "kind": { "const": "side-tie" }, "name": { "$ref": "#/$defs/partName" }, "about": { "$ref": "#/$defs/about" }, "slotSize": { "$ref": "#/$defs/slotSize" }, "mass": { "$ref": "#/$defs/massValue" }, "tested": { "$ref": "#/$defs/tested" }, "screw": { "$ref": "#/$defs/reference" }, "accessHole": { "$ref": "#/$defs/length", "description": "Hole drilled across the bar named first, through which the key meets the head behind its lips; standard 1.3 times the key." }, "lugs": { "type": "boolean", "description": "Fills both slots and so carries shear; standard false." } } };
function validate201(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate201.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.kind === void 0 && (missing0 = "kind") || data.name === void 0 && (missing0 = "name") || data.slotSize === void 0 && (missing0 = "slotSize") || data.mass === void 0 && (missing0 = "mass") || data.screw === void 0 && (missing0 = "screw")) {
        validate201.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!func1.call(schema55.properties, key0)) {
            validate201.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.kind !== void 0) {
            const _errs2 = errors;
            if ("side-tie" !== data.kind) {
              validate201.errors = [{ instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/const", keyword: "const", params: { allowedValue: "side-tie" }, message: "must be equal to constant" }];
              return false;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.name !== void 0) {
              const _errs3 = errors;
              if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.about !== void 0) {
                const _errs4 = errors;
                if (!validate70(data.about, { instancePath: instancePath + "/about", parentData: data, parentDataProperty: "about", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate70.errors : vErrors.concat(validate70.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs4 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.slotSize !== void 0) {
                  const _errs5 = errors;
                  if (!validate74(data.slotSize, { instancePath: instancePath + "/slotSize", parentData: data, parentDataProperty: "slotSize", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
                    errors = vErrors.length;
                  }
                  var valid0 = _errs5 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.mass !== void 0) {
                    const _errs6 = errors;
                    if (!validate150(data.mass, { instancePath: instancePath + "/mass", parentData: data, parentDataProperty: "mass", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate150.errors : vErrors.concat(validate150.errors);
                      errors = vErrors.length;
                    }
                    var valid0 = _errs6 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.tested !== void 0) {
                      const _errs7 = errors;
                      if (!validate152(data.tested, { instancePath: instancePath + "/tested", parentData: data, parentDataProperty: "tested", rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate152.errors : vErrors.concat(validate152.errors);
                        errors = vErrors.length;
                      }
                      var valid0 = _errs7 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.screw !== void 0) {
                        const _errs8 = errors;
                        if (!validate78(data.screw, { instancePath: instancePath + "/screw", parentData: data, parentDataProperty: "screw", rootData, dynamicAnchors })) {
                          vErrors = vErrors === null ? validate78.errors : vErrors.concat(validate78.errors);
                          errors = vErrors.length;
                        }
                        var valid0 = _errs8 === errors;
                      } else {
                        var valid0 = true;
                      }
                      if (valid0) {
                        if (data.accessHole !== void 0) {
                          const _errs9 = errors;
                          if (!validate72(data.accessHole, { instancePath: instancePath + "/accessHole", parentData: data, parentDataProperty: "accessHole", rootData, dynamicAnchors })) {
                            vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                            errors = vErrors.length;
                          }
                          var valid0 = _errs9 === errors;
                        } else {
                          var valid0 = true;
                        }
                        if (valid0) {
                          if (data.lugs !== void 0) {
                            const _errs10 = errors;
                            if (typeof data.lugs !== "boolean") {
                              validate201.errors = [{ instancePath: instancePath + "/lugs", schemaPath: "#/properties/lugs/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" }];
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
        }
      }
    } else {
      validate201.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate201.errors = vErrors;
  return errors === 0;
}
validate201.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var schema56 = { "type": "object", "required": ["kind", "name", "slotSize", "mass", "screw", "gap", "thickness", "holes"], "additionalProperties": false, "description": "Turns about one axis by design. A pivot can be locked; a hinge has one leaf on the door and one on the bar it hangs on.", "properties": { "kind": { "enum": ["pivot", "hinge"], "description": "pivot: can be locked. hinge: hangs a door." }, "name": { "$ref": "#/$defs/partName" }, "about": { "$ref": "#/$defs/about" }, "slotSize": { "$ref": "#/$defs/slotSize" }, "mass": { "$ref": "#/$defs/massValue" }, "tested": { "$ref": "#/$defs/tested" }, "screw": { "$ref": "#/$defs/reference" }, "gap": { "$ref": "#/$defs/length", "description": "Distance it keeps between the bars." }, "thickness": { "$ref": "#/$defs/length", "description": "Thickness of a leaf." }, "holes": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/holeSpec" }, "description": "Its screw holes, on both leaves." } } };
function validate209(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate209.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.kind === void 0 && (missing0 = "kind") || data.name === void 0 && (missing0 = "name") || data.slotSize === void 0 && (missing0 = "slotSize") || data.mass === void 0 && (missing0 = "mass") || data.screw === void 0 && (missing0 = "screw") || data.gap === void 0 && (missing0 = "gap") || data.thickness === void 0 && (missing0 = "thickness") || data.holes === void 0 && (missing0 = "holes")) {
        validate209.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!func1.call(schema56.properties, key0)) {
            validate209.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.kind !== void 0) {
            let data0 = data.kind;
            const _errs2 = errors;
            if (!(data0 === "pivot" || data0 === "hinge")) {
              validate209.errors = [{ instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/enum", keyword: "enum", params: { allowedValues: schema56.properties.kind.enum }, message: "must be equal to one of the allowed values" }];
              return false;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.name !== void 0) {
              const _errs3 = errors;
              if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.about !== void 0) {
                const _errs4 = errors;
                if (!validate70(data.about, { instancePath: instancePath + "/about", parentData: data, parentDataProperty: "about", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate70.errors : vErrors.concat(validate70.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs4 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.slotSize !== void 0) {
                  const _errs5 = errors;
                  if (!validate74(data.slotSize, { instancePath: instancePath + "/slotSize", parentData: data, parentDataProperty: "slotSize", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
                    errors = vErrors.length;
                  }
                  var valid0 = _errs5 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.mass !== void 0) {
                    const _errs6 = errors;
                    if (!validate150(data.mass, { instancePath: instancePath + "/mass", parentData: data, parentDataProperty: "mass", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate150.errors : vErrors.concat(validate150.errors);
                      errors = vErrors.length;
                    }
                    var valid0 = _errs6 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.tested !== void 0) {
                      const _errs7 = errors;
                      if (!validate152(data.tested, { instancePath: instancePath + "/tested", parentData: data, parentDataProperty: "tested", rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate152.errors : vErrors.concat(validate152.errors);
                        errors = vErrors.length;
                      }
                      var valid0 = _errs7 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.screw !== void 0) {
                        const _errs8 = errors;
                        if (!validate78(data.screw, { instancePath: instancePath + "/screw", parentData: data, parentDataProperty: "screw", rootData, dynamicAnchors })) {
                          vErrors = vErrors === null ? validate78.errors : vErrors.concat(validate78.errors);
                          errors = vErrors.length;
                        }
                        var valid0 = _errs8 === errors;
                      } else {
                        var valid0 = true;
                      }
                      if (valid0) {
                        if (data.gap !== void 0) {
                          const _errs9 = errors;
                          if (!validate72(data.gap, { instancePath: instancePath + "/gap", parentData: data, parentDataProperty: "gap", rootData, dynamicAnchors })) {
                            vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                            errors = vErrors.length;
                          }
                          var valid0 = _errs9 === errors;
                        } else {
                          var valid0 = true;
                        }
                        if (valid0) {
                          if (data.thickness !== void 0) {
                            const _errs10 = errors;
                            if (!validate72(data.thickness, { instancePath: instancePath + "/thickness", parentData: data, parentDataProperty: "thickness", rootData, dynamicAnchors })) {
                              vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                              errors = vErrors.length;
                            }
                            var valid0 = _errs10 === errors;
                          } else {
                            var valid0 = true;
                          }
                          if (valid0) {
                            if (data.holes !== void 0) {
                              let data9 = data.holes;
                              const _errs11 = errors;
                              if (errors === _errs11) {
                                if (Array.isArray(data9)) {
                                  if (data9.length < 1) {
                                    validate209.errors = [{ instancePath: instancePath + "/holes", schemaPath: "#/properties/holes/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" }];
                                    return false;
                                  } else {
                                    var valid1 = true;
                                    const len0 = data9.length;
                                    for (let i0 = 0; i0 < len0; i0++) {
                                      const _errs13 = errors;
                                      if (!validate162(data9[i0], { instancePath: instancePath + "/holes/" + i0, parentData: data9, parentDataProperty: i0, rootData, dynamicAnchors })) {
                                        vErrors = vErrors === null ? validate162.errors : vErrors.concat(validate162.errors);
                                        errors = vErrors.length;
                                      }
                                      var valid1 = _errs13 === errors;
                                      if (!valid1) {
                                        break;
                                      }
                                    }
                                  }
                                } else {
                                  validate209.errors = [{ instancePath: instancePath + "/holes", schemaPath: "#/properties/holes/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                  return false;
                                }
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
          }
        }
      }
    } else {
      validate209.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate209.errors = vErrors;
  return errors === 0;
}
validate209.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
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
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      const tag0 = data.kind;
      if (typeof tag0 == "string") {
        if (tag0 === "bracket") {
          if (!validate146(data, { instancePath, parentData, parentDataProperty, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate146.errors : vErrors.concat(validate146.errors);
            errors = vErrors.length;
          }
          var props0 = true;
        } else if (tag0 === "plate") {
          if (!validate171(data, { instancePath, parentData, parentDataProperty, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate171.errors : vErrors.concat(validate171.errors);
            errors = vErrors.length;
          }
          if (props0 !== true) {
            props0 = true;
          }
        } else if (tag0 === "end-fastener") {
          if (!validate181(data, { instancePath, parentData, parentDataProperty, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate181.errors : vErrors.concat(validate181.errors);
            errors = vErrors.length;
          }
          if (props0 !== true) {
            props0 = true;
          }
        } else if (tag0 === "end-screw") {
          if (!validate192(data, { instancePath, parentData, parentDataProperty, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate192.errors : vErrors.concat(validate192.errors);
            errors = vErrors.length;
          }
          if (props0 !== true) {
            props0 = true;
          }
        } else if (tag0 === "side-tie") {
          if (!validate201(data, { instancePath, parentData, parentDataProperty, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate201.errors : vErrors.concat(validate201.errors);
            errors = vErrors.length;
          }
          if (props0 !== true) {
            props0 = true;
          }
        } else if (tag0 === "pivot") {
          if (!validate209(data, { instancePath, parentData, parentDataProperty, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate209.errors : vErrors.concat(validate209.errors);
            errors = vErrors.length;
          }
          if (props0 !== true) {
            props0 = true;
          }
        } else if (tag0 === "hinge") {
          if (!validate209(data, { instancePath, parentData, parentDataProperty, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate209.errors : vErrors.concat(validate209.errors);
            errors = vErrors.length;
          }
          if (props0 !== true) {
            props0 = true;
          }
        } else {
          validate145.errors = [{ instancePath, schemaPath: "#/discriminator", keyword: "discriminator", params: { error: "mapping", tag: "kind", tagValue: tag0 }, message: 'value of tag "kind" must be in oneOf' }];
          return false;
        }
      } else {
        validate145.errors = [{ instancePath, schemaPath: "#/discriminator", keyword: "discriminator", params: { error: "tag", tag: "kind", tagValue: tag0 }, message: 'tag "kind" must be string' }];
        return false;
      }
    } else {
      validate145.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate145.errors = vErrors;
  evaluated0.props = props0;
  return errors === 0;
}
validate145.evaluated = { "dynamicProps": true, "dynamicItems": false };
var schema57 = { "type": "object", "required": ["name", "thread", "diameter", "pitch", "head", "headDiameter", "headHeight", "key", "socketDepth", "propertyClass", "torque", "lengths", "source"], "additionalProperties": false, "description": "Screws that differ only in length.", "properties": { "name": { "$ref": "#/$defs/partName", "pattern": "\\{length\\}", "description": "Name with {length} where the length goes, as it is written in lengths.", "examples": ["M8x{length}"] }, "thread": { "$ref": "#/$defs/thread" }, "diameter": { "$ref": "#/$defs/length", "description": "Nominal thread diameter." }, "pitch": { "$ref": "#/$defs/length", "description": "Thread pitch." }, "head": { "enum": ["cap", "button", "countersunk", "hex", "none"], "description": "Shape of the head." }, "headDiameter": { "$ref": "#/$defs/length", "description": "Largest head diameter." }, "headHeight": { "$ref": "#/$defs/length", "description": "Largest head height." }, "key": { "$ref": "#/$defs/length", "description": "Key size across flats." }, "socketDepth": { "$ref": "#/$defs/length", "description": "Least depth of the socket; 0 for external drives." }, "propertyClass": { "type": "string", "minLength": 1, "maxLength": 40, "description": "Strength class.", "examples": ["8.8"] }, "torque": { "$ref": "#/$defs/moment", "description": "Tightening torque the screw itself may take; what the slot allows is on the profile." }, "lengths": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/length" }, "description": "Lengths in stock: under the head, or over all for countersunk heads.", "examples": [[12, 16, 20]] }, "source": { "$ref": "#/$defs/source" } } };
var pattern4 = new RegExp("\\{length\\}", "u");
function validate227(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate227.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.name === void 0 && (missing0 = "name") || data.thread === void 0 && (missing0 = "thread") || data.diameter === void 0 && (missing0 = "diameter") || data.pitch === void 0 && (missing0 = "pitch") || data.head === void 0 && (missing0 = "head") || data.headDiameter === void 0 && (missing0 = "headDiameter") || data.headHeight === void 0 && (missing0 = "headHeight") || data.key === void 0 && (missing0 = "key") || data.socketDepth === void 0 && (missing0 = "socketDepth") || data.propertyClass === void 0 && (missing0 = "propertyClass") || data.torque === void 0 && (missing0 = "torque") || data.lengths === void 0 && (missing0 = "lengths") || data.source === void 0 && (missing0 = "source")) {
        validate227.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!func1.call(schema57.properties, key0)) {
            validate227.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.name !== void 0) {
            let data0 = data.name;
            const _errs2 = errors;
            if (!validate54(data0, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
              errors = vErrors.length;
            }
            if (errors === _errs2) {
              if (typeof data0 === "string") {
                if (!pattern4.test(data0)) {
                  validate227.errors = [{ instancePath: instancePath + "/name", schemaPath: "#/properties/name/pattern", keyword: "pattern", params: { pattern: "\\{length\\}" }, message: 'must match pattern "\\{length\\}"' }];
                  return false;
                }
              }
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.thread !== void 0) {
              const _errs3 = errors;
              if (!validate89(data.thread, { instancePath: instancePath + "/thread", parentData: data, parentDataProperty: "thread", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate89.errors : vErrors.concat(validate89.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.diameter !== void 0) {
                const _errs4 = errors;
                if (!validate72(data.diameter, { instancePath: instancePath + "/diameter", parentData: data, parentDataProperty: "diameter", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs4 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.pitch !== void 0) {
                  const _errs5 = errors;
                  if (!validate72(data.pitch, { instancePath: instancePath + "/pitch", parentData: data, parentDataProperty: "pitch", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                    errors = vErrors.length;
                  }
                  var valid0 = _errs5 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.head !== void 0) {
                    let data4 = data.head;
                    const _errs6 = errors;
                    if (!(data4 === "cap" || data4 === "button" || data4 === "countersunk" || data4 === "hex" || data4 === "none")) {
                      validate227.errors = [{ instancePath: instancePath + "/head", schemaPath: "#/properties/head/enum", keyword: "enum", params: { allowedValues: schema57.properties.head.enum }, message: "must be equal to one of the allowed values" }];
                      return false;
                    }
                    var valid0 = _errs6 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.headDiameter !== void 0) {
                      const _errs7 = errors;
                      if (!validate72(data.headDiameter, { instancePath: instancePath + "/headDiameter", parentData: data, parentDataProperty: "headDiameter", rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                        errors = vErrors.length;
                      }
                      var valid0 = _errs7 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.headHeight !== void 0) {
                        const _errs8 = errors;
                        if (!validate72(data.headHeight, { instancePath: instancePath + "/headHeight", parentData: data, parentDataProperty: "headHeight", rootData, dynamicAnchors })) {
                          vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                          errors = vErrors.length;
                        }
                        var valid0 = _errs8 === errors;
                      } else {
                        var valid0 = true;
                      }
                      if (valid0) {
                        if (data.key !== void 0) {
                          const _errs9 = errors;
                          if (!validate72(data.key, { instancePath: instancePath + "/key", parentData: data, parentDataProperty: "key", rootData, dynamicAnchors })) {
                            vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                            errors = vErrors.length;
                          }
                          var valid0 = _errs9 === errors;
                        } else {
                          var valid0 = true;
                        }
                        if (valid0) {
                          if (data.socketDepth !== void 0) {
                            const _errs10 = errors;
                            if (!validate72(data.socketDepth, { instancePath: instancePath + "/socketDepth", parentData: data, parentDataProperty: "socketDepth", rootData, dynamicAnchors })) {
                              vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                              errors = vErrors.length;
                            }
                            var valid0 = _errs10 === errors;
                          } else {
                            var valid0 = true;
                          }
                          if (valid0) {
                            if (data.propertyClass !== void 0) {
                              let data9 = data.propertyClass;
                              const _errs11 = errors;
                              if (errors === _errs11) {
                                if (typeof data9 === "string") {
                                  if (func2(data9) > 40) {
                                    validate227.errors = [{ instancePath: instancePath + "/propertyClass", schemaPath: "#/properties/propertyClass/maxLength", keyword: "maxLength", params: { limit: 40 }, message: "must NOT have more than 40 characters" }];
                                    return false;
                                  } else {
                                    if (func2(data9) < 1) {
                                      validate227.errors = [{ instancePath: instancePath + "/propertyClass", schemaPath: "#/properties/propertyClass/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
                                      return false;
                                    }
                                  }
                                } else {
                                  validate227.errors = [{ instancePath: instancePath + "/propertyClass", schemaPath: "#/properties/propertyClass/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                  return false;
                                }
                              }
                              var valid0 = _errs11 === errors;
                            } else {
                              var valid0 = true;
                            }
                            if (valid0) {
                              if (data.torque !== void 0) {
                                const _errs13 = errors;
                                if (!validate103(data.torque, { instancePath: instancePath + "/torque", parentData: data, parentDataProperty: "torque", rootData, dynamicAnchors })) {
                                  vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
                                  errors = vErrors.length;
                                }
                                var valid0 = _errs13 === errors;
                              } else {
                                var valid0 = true;
                              }
                              if (valid0) {
                                if (data.lengths !== void 0) {
                                  let data11 = data.lengths;
                                  const _errs14 = errors;
                                  if (errors === _errs14) {
                                    if (Array.isArray(data11)) {
                                      if (data11.length < 1) {
                                        validate227.errors = [{ instancePath: instancePath + "/lengths", schemaPath: "#/properties/lengths/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" }];
                                        return false;
                                      } else {
                                        var valid1 = true;
                                        const len0 = data11.length;
                                        for (let i0 = 0; i0 < len0; i0++) {
                                          const _errs16 = errors;
                                          if (!validate72(data11[i0], { instancePath: instancePath + "/lengths/" + i0, parentData: data11, parentDataProperty: i0, rootData, dynamicAnchors })) {
                                            vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                                            errors = vErrors.length;
                                          }
                                          var valid1 = _errs16 === errors;
                                          if (!valid1) {
                                            break;
                                          }
                                        }
                                      }
                                    } else {
                                      validate227.errors = [{ instancePath: instancePath + "/lengths", schemaPath: "#/properties/lengths/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                      return false;
                                    }
                                  }
                                  var valid0 = _errs14 === errors;
                                } else {
                                  var valid0 = true;
                                }
                                if (valid0) {
                                  if (data.source !== void 0) {
                                    const _errs17 = errors;
                                    if (!validate65(data.source, { instancePath: instancePath + "/source", parentData: data, parentDataProperty: "source", rootData, dynamicAnchors })) {
                                      vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
                                      errors = vErrors.length;
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
            }
          }
        }
      }
    } else {
      validate227.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate227.errors = vErrors;
  return errors === 0;
}
validate227.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var schema58 = { "type": "object", "required": ["name", "kind", "slotSize", "thread", "length", "width", "thickness", "engagement"], "additionalProperties": false, "description": "A T-nut.", "properties": { "name": { "$ref": "#/$defs/partName" }, "kind": { "enum": ["end-load", "drop-in"], "description": "end-load: pushed in from a cut end. drop-in: put through the opening anywhere." }, "slotSize": { "$ref": "#/$defs/slotSize" }, "thread": { "$ref": "#/$defs/thread" }, "length": { "$ref": "#/$defs/length", "description": "Along the slot." }, "width": { "$ref": "#/$defs/length", "description": "Across the slot, under the lips." }, "thickness": { "$ref": "#/$defs/length", "description": "From the underside of the lips into the slot." }, "engagement": { "$ref": "#/$defs/length", "description": "Length of thread the screw engages." } }, "examples": [{ "name": "nut-8-M8", "kind": "end-load", "slotSize": "8", "thread": "M8", "length": 20, "width": 15, "thickness": 6, "engagement": 6 }] };
function validate240(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate240.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.name === void 0 && (missing0 = "name") || data.kind === void 0 && (missing0 = "kind") || data.slotSize === void 0 && (missing0 = "slotSize") || data.thread === void 0 && (missing0 = "thread") || data.length === void 0 && (missing0 = "length") || data.width === void 0 && (missing0 = "width") || data.thickness === void 0 && (missing0 = "thickness") || data.engagement === void 0 && (missing0 = "engagement")) {
        validate240.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "name" || key0 === "kind" || key0 === "slotSize" || key0 === "thread" || key0 === "length" || key0 === "width" || key0 === "thickness" || key0 === "engagement")) {
            validate240.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.name !== void 0) {
            const _errs2 = errors;
            if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
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
              if (!(data1 === "end-load" || data1 === "drop-in")) {
                validate240.errors = [{ instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/enum", keyword: "enum", params: { allowedValues: schema58.properties.kind.enum }, message: "must be equal to one of the allowed values" }];
                return false;
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.slotSize !== void 0) {
                const _errs4 = errors;
                if (!validate74(data.slotSize, { instancePath: instancePath + "/slotSize", parentData: data, parentDataProperty: "slotSize", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs4 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.thread !== void 0) {
                  const _errs5 = errors;
                  if (!validate89(data.thread, { instancePath: instancePath + "/thread", parentData: data, parentDataProperty: "thread", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate89.errors : vErrors.concat(validate89.errors);
                    errors = vErrors.length;
                  }
                  var valid0 = _errs5 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.length !== void 0) {
                    const _errs6 = errors;
                    if (!validate72(data.length, { instancePath: instancePath + "/length", parentData: data, parentDataProperty: "length", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                      errors = vErrors.length;
                    }
                    var valid0 = _errs6 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.width !== void 0) {
                      const _errs7 = errors;
                      if (!validate72(data.width, { instancePath: instancePath + "/width", parentData: data, parentDataProperty: "width", rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                        errors = vErrors.length;
                      }
                      var valid0 = _errs7 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.thickness !== void 0) {
                        const _errs8 = errors;
                        if (!validate72(data.thickness, { instancePath: instancePath + "/thickness", parentData: data, parentDataProperty: "thickness", rootData, dynamicAnchors })) {
                          vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                          errors = vErrors.length;
                        }
                        var valid0 = _errs8 === errors;
                      } else {
                        var valid0 = true;
                      }
                      if (valid0) {
                        if (data.engagement !== void 0) {
                          const _errs9 = errors;
                          if (!validate72(data.engagement, { instancePath: instancePath + "/engagement", parentData: data, parentDataProperty: "engagement", rootData, dynamicAnchors })) {
                            vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                            errors = vErrors.length;
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
            }
          }
        }
      }
    } else {
      validate240.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate240.errors = vErrors;
  return errors === 0;
}
validate240.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
function validate249(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate249.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.name === void 0 && (missing0 = "name") || data.profiles === void 0 && (missing0 = "profiles") || data.thickness === void 0 && (missing0 = "thickness") || data.mass === void 0 && (missing0 = "mass")) {
        validate249.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "name" || key0 === "profiles" || key0 === "thickness" || key0 === "mass")) {
            validate249.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.name !== void 0) {
            const _errs2 = errors;
            if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.profiles !== void 0) {
              let data1 = data.profiles;
              const _errs3 = errors;
              if (errors === _errs3) {
                if (Array.isArray(data1)) {
                  if (data1.length < 1) {
                    validate249.errors = [{ instancePath: instancePath + "/profiles", schemaPath: "#/properties/profiles/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" }];
                    return false;
                  } else {
                    var valid1 = true;
                    const len0 = data1.length;
                    for (let i0 = 0; i0 < len0; i0++) {
                      const _errs5 = errors;
                      if (!validate78(data1[i0], { instancePath: instancePath + "/profiles/" + i0, parentData: data1, parentDataProperty: i0, rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate78.errors : vErrors.concat(validate78.errors);
                        errors = vErrors.length;
                      }
                      var valid1 = _errs5 === errors;
                      if (!valid1) {
                        break;
                      }
                    }
                  }
                } else {
                  validate249.errors = [{ instancePath: instancePath + "/profiles", schemaPath: "#/properties/profiles/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                  return false;
                }
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.thickness !== void 0) {
                const _errs6 = errors;
                if (!validate72(data.thickness, { instancePath: instancePath + "/thickness", parentData: data, parentDataProperty: "thickness", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs6 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.mass !== void 0) {
                  const _errs7 = errors;
                  if (!validate150(data.mass, { instancePath: instancePath + "/mass", parentData: data, parentDataProperty: "mass", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate150.errors : vErrors.concat(validate150.errors);
                    errors = vErrors.length;
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
      validate249.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate249.errors = vErrors;
  return errors === 0;
}
validate249.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var schema60 = { "type": "object", "required": ["name", "kind", "mount", "diameter", "collar", "raise", "capacity", "mass"], "additionalProperties": false, "description": "A levelling foot or a caster.", "properties": { "name": { "$ref": "#/$defs/partName" }, "kind": { "enum": ["foot", "caster"], "description": "foot: stands. caster: rolls." }, "mount": { "$ref": "#/$defs/mount" }, "diameter": { "$ref": "#/$defs/length", "description": "Of the pad or wheel." }, "collar": { "$ref": "#/$defs/length", "description": "Diameter of what covers the bar's end." }, "raise": { "$ref": "#/$defs/lengthPair", "description": "Least and greatest distance from floor to bar end." }, "capacity": { "$ref": "#/$defs/force" }, "brake": { "type": "boolean", "description": "Standard false." }, "swivel": { "type": "boolean", "description": "Turns about the upright axis; standard false." }, "mass": { "$ref": "#/$defs/massValue" } } };
function validate258(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate258.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.by === void 0 && (missing0 = "by") || data.thread === void 0 && (missing0 = "thread") || data.engagement === void 0 && (missing0 = "engagement")) {
        validate258.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "by" || key0 === "thread" || key0 === "engagement")) {
            validate258.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.by !== void 0) {
            const _errs2 = errors;
            if ("stem" !== data.by) {
              validate258.errors = [{ instancePath: instancePath + "/by", schemaPath: "#/properties/by/const", keyword: "const", params: { allowedValue: "stem" }, message: "must be equal to constant" }];
              return false;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.thread !== void 0) {
              const _errs3 = errors;
              if (!validate89(data.thread, { instancePath: instancePath + "/thread", parentData: data, parentDataProperty: "thread", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate89.errors : vErrors.concat(validate89.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.engagement !== void 0) {
                const _errs4 = errors;
                if (!validate72(data.engagement, { instancePath: instancePath + "/engagement", parentData: data, parentDataProperty: "engagement", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs4 === errors;
              } else {
                var valid0 = true;
              }
            }
          }
        }
      }
    } else {
      validate258.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate258.errors = vErrors;
  return errors === 0;
}
validate258.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
function validate261(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate261.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.by === void 0 && (missing0 = "by") || data.size === void 0 && (missing0 = "size") || data.thickness === void 0 && (missing0 = "thickness")) {
        validate261.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "by" || key0 === "size" || key0 === "thickness" || key0 === "holes")) {
            validate261.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.by !== void 0) {
            const _errs2 = errors;
            if ("plate" !== data.by) {
              validate261.errors = [{ instancePath: instancePath + "/by", schemaPath: "#/properties/by/const", keyword: "const", params: { allowedValue: "plate" }, message: "must be equal to constant" }];
              return false;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.size !== void 0) {
              const _errs3 = errors;
              if (!validate99(data.size, { instancePath: instancePath + "/size", parentData: data, parentDataProperty: "size", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate99.errors : vErrors.concat(validate99.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.thickness !== void 0) {
                const _errs4 = errors;
                if (!validate72(data.thickness, { instancePath: instancePath + "/thickness", parentData: data, parentDataProperty: "thickness", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs4 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.holes !== void 0) {
                  let data3 = data.holes;
                  const _errs5 = errors;
                  if (errors === _errs5) {
                    if (Array.isArray(data3)) {
                      if (data3.length < 1) {
                        validate261.errors = [{ instancePath: instancePath + "/holes", schemaPath: "#/properties/holes/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" }];
                        return false;
                      } else {
                        var valid1 = true;
                        const len0 = data3.length;
                        for (let i0 = 0; i0 < len0; i0++) {
                          const _errs7 = errors;
                          if (!validate162(data3[i0], { instancePath: instancePath + "/holes/" + i0, parentData: data3, parentDataProperty: i0, rootData, dynamicAnchors })) {
                            vErrors = vErrors === null ? validate162.errors : vErrors.concat(validate162.errors);
                            errors = vErrors.length;
                          }
                          var valid1 = _errs7 === errors;
                          if (!valid1) {
                            break;
                          }
                        }
                      }
                    } else {
                      validate261.errors = [{ instancePath: instancePath + "/holes", schemaPath: "#/properties/holes/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                      return false;
                    }
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
      validate261.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate261.errors = vErrors;
  return errors === 0;
}
validate261.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
function validate257(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate257.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      const tag0 = data.by;
      if (typeof tag0 == "string") {
        if (tag0 === "stem") {
          if (!validate258(data, { instancePath, parentData, parentDataProperty, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate258.errors : vErrors.concat(validate258.errors);
            errors = vErrors.length;
          }
          var props0 = true;
        } else if (tag0 === "plate") {
          if (!validate261(data, { instancePath, parentData, parentDataProperty, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate261.errors : vErrors.concat(validate261.errors);
            errors = vErrors.length;
          }
          if (props0 !== true) {
            props0 = true;
          }
        } else {
          validate257.errors = [{ instancePath, schemaPath: "#/discriminator", keyword: "discriminator", params: { error: "mapping", tag: "by", tagValue: tag0 }, message: 'value of tag "by" must be in oneOf' }];
          return false;
        }
      } else {
        validate257.errors = [{ instancePath, schemaPath: "#/discriminator", keyword: "discriminator", params: { error: "tag", tag: "by", tagValue: tag0 }, message: 'tag "by" must be string' }];
        return false;
      }
    } else {
      validate257.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate257.errors = vErrors;
  evaluated0.props = props0;
  return errors === 0;
}
validate257.evaluated = { "dynamicProps": true, "dynamicItems": false };
function validate255(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate255.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.name === void 0 && (missing0 = "name") || data.kind === void 0 && (missing0 = "kind") || data.mount === void 0 && (missing0 = "mount") || data.diameter === void 0 && (missing0 = "diameter") || data.collar === void 0 && (missing0 = "collar") || data.raise === void 0 && (missing0 = "raise") || data.capacity === void 0 && (missing0 = "capacity") || data.mass === void 0 && (missing0 = "mass")) {
        validate255.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!func1.call(schema60.properties, key0)) {
            validate255.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.name !== void 0) {
            const _errs2 = errors;
            if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
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
              if (!(data1 === "foot" || data1 === "caster")) {
                validate255.errors = [{ instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/enum", keyword: "enum", params: { allowedValues: schema60.properties.kind.enum }, message: "must be equal to one of the allowed values" }];
                return false;
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.mount !== void 0) {
                const _errs4 = errors;
                if (!validate257(data.mount, { instancePath: instancePath + "/mount", parentData: data, parentDataProperty: "mount", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate257.errors : vErrors.concat(validate257.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs4 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.diameter !== void 0) {
                  const _errs5 = errors;
                  if (!validate72(data.diameter, { instancePath: instancePath + "/diameter", parentData: data, parentDataProperty: "diameter", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                    errors = vErrors.length;
                  }
                  var valid0 = _errs5 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.collar !== void 0) {
                    const _errs6 = errors;
                    if (!validate72(data.collar, { instancePath: instancePath + "/collar", parentData: data, parentDataProperty: "collar", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                      errors = vErrors.length;
                    }
                    var valid0 = _errs6 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.raise !== void 0) {
                      const _errs7 = errors;
                      if (!validate99(data.raise, { instancePath: instancePath + "/raise", parentData: data, parentDataProperty: "raise", rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate99.errors : vErrors.concat(validate99.errors);
                        errors = vErrors.length;
                      }
                      var valid0 = _errs7 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.capacity !== void 0) {
                        const _errs8 = errors;
                        if (!validate96(data.capacity, { instancePath: instancePath + "/capacity", parentData: data, parentDataProperty: "capacity", rootData, dynamicAnchors })) {
                          vErrors = vErrors === null ? validate96.errors : vErrors.concat(validate96.errors);
                          errors = vErrors.length;
                        }
                        var valid0 = _errs8 === errors;
                      } else {
                        var valid0 = true;
                      }
                      if (valid0) {
                        if (data.brake !== void 0) {
                          const _errs9 = errors;
                          if (typeof data.brake !== "boolean") {
                            validate255.errors = [{ instancePath: instancePath + "/brake", schemaPath: "#/properties/brake/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" }];
                            return false;
                          }
                          var valid0 = _errs9 === errors;
                        } else {
                          var valid0 = true;
                        }
                        if (valid0) {
                          if (data.swivel !== void 0) {
                            const _errs11 = errors;
                            if (typeof data.swivel !== "boolean") {
                              validate255.errors = [{ instancePath: instancePath + "/swivel", schemaPath: "#/properties/swivel/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" }];
                              return false;
                            }
                            var valid0 = _errs11 === errors;
                          } else {
                            var valid0 = true;
                          }
                          if (valid0) {
                            if (data.mass !== void 0) {
                              const _errs13 = errors;
                              if (!validate150(data.mass, { instancePath: instancePath + "/mass", parentData: data, parentDataProperty: "mass", rootData, dynamicAnchors })) {
                                vErrors = vErrors === null ? validate150.errors : vErrors.concat(validate150.errors);
                                errors = vErrors.length;
                              }
                              var valid0 = _errs13 === errors;
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
      validate255.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate255.errors = vErrors;
  return errors === 0;
}
validate255.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var schema64 = { "type": "object", "required": ["name", "thicknesses", "elasticModulus", "poisson", "density", "expansion", "strength", "brittle", "source"], "additionalProperties": false, "description": "Sheets of one material.", "properties": { "name": { "$ref": "#/$defs/partName", "pattern": "\\{thickness\\}", "description": "Name with {thickness} where the thickness goes, as it is written in thicknesses.", "examples": ["polycarbonate-{thickness}"] }, "thicknesses": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/length" }, "description": "Thicknesses in stock.", "examples": [[3, 5]] }, "elasticModulus": { "$ref": "#/$defs/stress" }, "poisson": { "type": "number", "minimum": 0, "exclusiveMaximum": 0.5, "description": "Poisson's ratio." }, "shearModulus": { "$ref": "#/$defs/stress", "description": "Against shear in the plane of the sheet; standard E / (2 (1 + \u03BD)), which is too much for wood." }, "density": { "$ref": "#/$defs/density" }, "expansion": { "$ref": "#/$defs/expansion" }, "strength": { "$ref": "#/$defs/stress", "description": "Yield or bending strength." }, "moisture": { "type": "number", "minimum": 0, "maximum": 0.05, "description": "By which share of its length it grows from dry to damp, in the direction that moves more; standard 0.", "examples": [6e-3] }, "brittle": { "type": "boolean", "description": "Breaks without yielding." }, "source": { "$ref": "#/$defs/source" } } };
var pattern5 = new RegExp("\\{thickness\\}", "u");
function validate274(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate274.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.name === void 0 && (missing0 = "name") || data.thicknesses === void 0 && (missing0 = "thicknesses") || data.elasticModulus === void 0 && (missing0 = "elasticModulus") || data.poisson === void 0 && (missing0 = "poisson") || data.density === void 0 && (missing0 = "density") || data.expansion === void 0 && (missing0 = "expansion") || data.strength === void 0 && (missing0 = "strength") || data.brittle === void 0 && (missing0 = "brittle") || data.source === void 0 && (missing0 = "source")) {
        validate274.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!func1.call(schema64.properties, key0)) {
            validate274.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.name !== void 0) {
            let data0 = data.name;
            const _errs2 = errors;
            if (!validate54(data0, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
              errors = vErrors.length;
            }
            if (errors === _errs2) {
              if (typeof data0 === "string") {
                if (!pattern5.test(data0)) {
                  validate274.errors = [{ instancePath: instancePath + "/name", schemaPath: "#/properties/name/pattern", keyword: "pattern", params: { pattern: "\\{thickness\\}" }, message: 'must match pattern "\\{thickness\\}"' }];
                  return false;
                }
              }
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.thicknesses !== void 0) {
              let data1 = data.thicknesses;
              const _errs3 = errors;
              if (errors === _errs3) {
                if (Array.isArray(data1)) {
                  if (data1.length < 1) {
                    validate274.errors = [{ instancePath: instancePath + "/thicknesses", schemaPath: "#/properties/thicknesses/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" }];
                    return false;
                  } else {
                    var valid1 = true;
                    const len0 = data1.length;
                    for (let i0 = 0; i0 < len0; i0++) {
                      const _errs5 = errors;
                      if (!validate72(data1[i0], { instancePath: instancePath + "/thicknesses/" + i0, parentData: data1, parentDataProperty: i0, rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                        errors = vErrors.length;
                      }
                      var valid1 = _errs5 === errors;
                      if (!valid1) {
                        break;
                      }
                    }
                  }
                } else {
                  validate274.errors = [{ instancePath: instancePath + "/thicknesses", schemaPath: "#/properties/thicknesses/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                  return false;
                }
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.elasticModulus !== void 0) {
                const _errs6 = errors;
                if (!validate56(data.elasticModulus, { instancePath: instancePath + "/elasticModulus", parentData: data, parentDataProperty: "elasticModulus", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate56.errors : vErrors.concat(validate56.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs6 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.poisson !== void 0) {
                  let data4 = data.poisson;
                  const _errs7 = errors;
                  if (errors === _errs7) {
                    if (typeof data4 == "number" && isFinite(data4)) {
                      if (data4 < 0 || isNaN(data4)) {
                        validate274.errors = [{ instancePath: instancePath + "/poisson", schemaPath: "#/properties/poisson/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" }];
                        return false;
                      } else {
                        if (data4 >= 0.5 || isNaN(data4)) {
                          validate274.errors = [{ instancePath: instancePath + "/poisson", schemaPath: "#/properties/poisson/exclusiveMaximum", keyword: "exclusiveMaximum", params: { comparison: "<", limit: 0.5 }, message: "must be < 0.5" }];
                          return false;
                        }
                      }
                    } else {
                      validate274.errors = [{ instancePath: instancePath + "/poisson", schemaPath: "#/properties/poisson/type", keyword: "type", params: { type: "number" }, message: "must be number" }];
                      return false;
                    }
                  }
                  var valid0 = _errs7 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.shearModulus !== void 0) {
                    const _errs9 = errors;
                    if (!validate56(data.shearModulus, { instancePath: instancePath + "/shearModulus", parentData: data, parentDataProperty: "shearModulus", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate56.errors : vErrors.concat(validate56.errors);
                      errors = vErrors.length;
                    }
                    var valid0 = _errs9 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.density !== void 0) {
                      const _errs10 = errors;
                      if (!validate59(data.density, { instancePath: instancePath + "/density", parentData: data, parentDataProperty: "density", rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate59.errors : vErrors.concat(validate59.errors);
                        errors = vErrors.length;
                      }
                      var valid0 = _errs10 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.expansion !== void 0) {
                        const _errs11 = errors;
                        if (!validate61(data.expansion, { instancePath: instancePath + "/expansion", parentData: data, parentDataProperty: "expansion", rootData, dynamicAnchors })) {
                          vErrors = vErrors === null ? validate61.errors : vErrors.concat(validate61.errors);
                          errors = vErrors.length;
                        }
                        var valid0 = _errs11 === errors;
                      } else {
                        var valid0 = true;
                      }
                      if (valid0) {
                        if (data.strength !== void 0) {
                          const _errs12 = errors;
                          if (!validate56(data.strength, { instancePath: instancePath + "/strength", parentData: data, parentDataProperty: "strength", rootData, dynamicAnchors })) {
                            vErrors = vErrors === null ? validate56.errors : vErrors.concat(validate56.errors);
                            errors = vErrors.length;
                          }
                          var valid0 = _errs12 === errors;
                        } else {
                          var valid0 = true;
                        }
                        if (valid0) {
                          if (data.moisture !== void 0) {
                            let data9 = data.moisture;
                            const _errs13 = errors;
                            if (errors === _errs13) {
                              if (typeof data9 == "number" && isFinite(data9)) {
                                if (data9 > 0.05 || isNaN(data9)) {
                                  validate274.errors = [{ instancePath: instancePath + "/moisture", schemaPath: "#/properties/moisture/maximum", keyword: "maximum", params: { comparison: "<=", limit: 0.05 }, message: "must be <= 0.05" }];
                                  return false;
                                } else {
                                  if (data9 < 0 || isNaN(data9)) {
                                    validate274.errors = [{ instancePath: instancePath + "/moisture", schemaPath: "#/properties/moisture/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" }];
                                    return false;
                                  }
                                }
                              } else {
                                validate274.errors = [{ instancePath: instancePath + "/moisture", schemaPath: "#/properties/moisture/type", keyword: "type", params: { type: "number" }, message: "must be number" }];
                                return false;
                              }
                            }
                            var valid0 = _errs13 === errors;
                          } else {
                            var valid0 = true;
                          }
                          if (valid0) {
                            if (data.brittle !== void 0) {
                              const _errs15 = errors;
                              if (typeof data.brittle !== "boolean") {
                                validate274.errors = [{ instancePath: instancePath + "/brittle", schemaPath: "#/properties/brittle/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" }];
                                return false;
                              }
                              var valid0 = _errs15 === errors;
                            } else {
                              var valid0 = true;
                            }
                            if (valid0) {
                              if (data.source !== void 0) {
                                const _errs17 = errors;
                                if (!validate65(data.source, { instancePath: instancePath + "/source", parentData: data, parentDataProperty: "source", rootData, dynamicAnchors })) {
                                  vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
                                  errors = vErrors.length;
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
        }
      }
    } else {
      validate274.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate274.errors = vErrors;
  return errors === 0;
}
validate274.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
function validate284(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate284.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.name === void 0 && (missing0 = "name") || data.slotSize === void 0 && (missing0 = "slotSize") || data.sheet === void 0 && (missing0 = "sheet") || data.depth === void 0 && (missing0 = "depth")) {
        validate284.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "name" || key0 === "slotSize" || key0 === "sheet" || key0 === "depth")) {
            validate284.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.name !== void 0) {
            const _errs2 = errors;
            if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
              errors = vErrors.length;
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.slotSize !== void 0) {
              const _errs3 = errors;
              if (!validate74(data.slotSize, { instancePath: instancePath + "/slotSize", parentData: data, parentDataProperty: "slotSize", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.sheet !== void 0) {
                const _errs4 = errors;
                if (!validate99(data.sheet, { instancePath: instancePath + "/sheet", parentData: data, parentDataProperty: "sheet", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate99.errors : vErrors.concat(validate99.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs4 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.depth !== void 0) {
                  const _errs5 = errors;
                  if (!validate72(data.depth, { instancePath: instancePath + "/depth", parentData: data, parentDataProperty: "depth", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                    errors = vErrors.length;
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
      validate284.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate284.errors = vErrors;
  return errors === 0;
}
validate284.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var schema66 = { "type": "object", "required": ["name", "kind", "swing", "tilt", "sizes", "source"], "additionalProperties": false, "description": "One kind of key in several sizes.", "properties": { "name": { "$ref": "#/$defs/partName", "pattern": "\\{size\\}", "description": "Name with {size} where the size goes.", "examples": ["hex-key-{size}"] }, "kind": { "enum": ["hex-key", "ball-end-key", "t-handle", "bit-ratchet", "wrench"], "description": "How it reaches and swings." }, "swing": { "$ref": "#/$defs/angle", "description": "Least swing between two bites." }, "tilt": { "$ref": "#/$defs/angle", "description": "Largest tilt in the socket; 0 for straight keys." }, "sizes": { "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/toolSize" }, "description": "Sizes in the kit." }, "source": { "$ref": "#/$defs/source" } } };
var schema67 = { "type": ["number", "string"], "maxLength": 64, "description": "An angle: a number in degrees, or a string with its unit.", "x-quantity": "angle", "examples": [60] };
function validate292(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate292.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (!(typeof data == "number" && isFinite(data)) && typeof data !== "string") {
    validate292.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: schema67.type }, message: "must be number,string" }];
    return false;
  }
  if (errors === 0) {
    if (typeof data === "string") {
      if (func2(data) > 64) {
        validate292.errors = [{ instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" }];
        return false;
      }
    }
  }
  validate292.errors = vErrors;
  return errors === 0;
}
validate292.evaluated = { "dynamicProps": false, "dynamicItems": false };
function validate295(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate295.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.size === void 0 && (missing0 = "size") || data.key === void 0 && (missing0 = "key") || data.longArm === void 0 && (missing0 = "longArm") || data.shortArm === void 0 && (missing0 = "shortArm") || data.torque === void 0 && (missing0 = "torque")) {
        validate295.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "size" || key0 === "key" || key0 === "longArm" || key0 === "shortArm" || key0 === "torque")) {
            validate295.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.size !== void 0) {
            let data0 = data.size;
            const _errs2 = errors;
            if (errors === _errs2) {
              if (typeof data0 === "string") {
                if (func2(data0) > 20) {
                  validate295.errors = [{ instancePath: instancePath + "/size", schemaPath: "#/properties/size/maxLength", keyword: "maxLength", params: { limit: 20 }, message: "must NOT have more than 20 characters" }];
                  return false;
                } else {
                  if (func2(data0) < 1) {
                    validate295.errors = [{ instancePath: instancePath + "/size", schemaPath: "#/properties/size/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
                    return false;
                  }
                }
              } else {
                validate295.errors = [{ instancePath: instancePath + "/size", schemaPath: "#/properties/size/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                return false;
              }
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.key !== void 0) {
              const _errs4 = errors;
              if (!validate72(data.key, { instancePath: instancePath + "/key", parentData: data, parentDataProperty: "key", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs4 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.longArm !== void 0) {
                const _errs5 = errors;
                if (!validate72(data.longArm, { instancePath: instancePath + "/longArm", parentData: data, parentDataProperty: "longArm", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs5 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.shortArm !== void 0) {
                  const _errs6 = errors;
                  if (!validate72(data.shortArm, { instancePath: instancePath + "/shortArm", parentData: data, parentDataProperty: "shortArm", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
                    errors = vErrors.length;
                  }
                  var valid0 = _errs6 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.torque !== void 0) {
                    const _errs7 = errors;
                    if (!validate103(data.torque, { instancePath: instancePath + "/torque", parentData: data, parentDataProperty: "torque", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
                      errors = vErrors.length;
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
      }
    } else {
      validate295.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate295.errors = vErrors;
  return errors === 0;
}
validate295.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var pattern6 = new RegExp("\\{size\\}", "u");
function validate290(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate290.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.name === void 0 && (missing0 = "name") || data.kind === void 0 && (missing0 = "kind") || data.swing === void 0 && (missing0 = "swing") || data.tilt === void 0 && (missing0 = "tilt") || data.sizes === void 0 && (missing0 = "sizes") || data.source === void 0 && (missing0 = "source")) {
        validate290.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "name" || key0 === "kind" || key0 === "swing" || key0 === "tilt" || key0 === "sizes" || key0 === "source")) {
            validate290.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.name !== void 0) {
            let data0 = data.name;
            const _errs2 = errors;
            if (!validate54(data0, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
              errors = vErrors.length;
            }
            if (errors === _errs2) {
              if (typeof data0 === "string") {
                if (!pattern6.test(data0)) {
                  validate290.errors = [{ instancePath: instancePath + "/name", schemaPath: "#/properties/name/pattern", keyword: "pattern", params: { pattern: "\\{size\\}" }, message: 'must match pattern "\\{size\\}"' }];
                  return false;
                }
              }
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.kind !== void 0) {
              let data1 = data.kind;
              const _errs3 = errors;
              if (!(data1 === "hex-key" || data1 === "ball-end-key" || data1 === "t-handle" || data1 === "bit-ratchet" || data1 === "wrench")) {
                validate290.errors = [{ instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/enum", keyword: "enum", params: { allowedValues: schema66.properties.kind.enum }, message: "must be equal to one of the allowed values" }];
                return false;
              }
              var valid0 = _errs3 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.swing !== void 0) {
                const _errs4 = errors;
                if (!validate292(data.swing, { instancePath: instancePath + "/swing", parentData: data, parentDataProperty: "swing", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate292.errors : vErrors.concat(validate292.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs4 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.tilt !== void 0) {
                  const _errs5 = errors;
                  if (!validate292(data.tilt, { instancePath: instancePath + "/tilt", parentData: data, parentDataProperty: "tilt", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate292.errors : vErrors.concat(validate292.errors);
                    errors = vErrors.length;
                  }
                  var valid0 = _errs5 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.sizes !== void 0) {
                    let data4 = data.sizes;
                    const _errs6 = errors;
                    if (errors === _errs6) {
                      if (Array.isArray(data4)) {
                        if (data4.length < 1) {
                          validate290.errors = [{ instancePath: instancePath + "/sizes", schemaPath: "#/properties/sizes/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" }];
                          return false;
                        } else {
                          var valid1 = true;
                          const len0 = data4.length;
                          for (let i0 = 0; i0 < len0; i0++) {
                            const _errs8 = errors;
                            if (!validate295(data4[i0], { instancePath: instancePath + "/sizes/" + i0, parentData: data4, parentDataProperty: i0, rootData, dynamicAnchors })) {
                              vErrors = vErrors === null ? validate295.errors : vErrors.concat(validate295.errors);
                              errors = vErrors.length;
                            }
                            var valid1 = _errs8 === errors;
                            if (!valid1) {
                              break;
                            }
                          }
                        }
                      } else {
                        validate290.errors = [{ instancePath: instancePath + "/sizes", schemaPath: "#/properties/sizes/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                        return false;
                      }
                    }
                    var valid0 = _errs6 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.source !== void 0) {
                      const _errs9 = errors;
                      if (!validate65(data.source, { instancePath: instancePath + "/source", parentData: data, parentDataProperty: "source", rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
                        errors = vErrors.length;
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
        }
      }
    } else {
      validate290.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate290.errors = vErrors;
  return errors === 0;
}
validate290.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
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
      if (data.format === void 0 && (missing0 = "format") || data.units === void 0 && (missing0 = "units") || data.title === void 0 && (missing0 = "title")) {
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
              if (data.units !== void 0) {
                let data2 = data.units;
                const _errs5 = errors;
                if (!(data2 === "mm-N-kg" || data2 === "in-lbf-lb")) {
                  validate52.errors = [{ instancePath: instancePath + "/units", schemaPath: "#/properties/units/enum", keyword: "enum", params: { allowedValues: schema19.properties.units.enum }, message: "must be equal to one of the allowed values" }];
                  return false;
                }
                var valid0 = _errs5 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.title !== void 0) {
                  let data3 = data.title;
                  const _errs6 = errors;
                  if (errors === _errs6) {
                    if (typeof data3 === "string") {
                      if (func2(data3) > 200) {
                        validate52.errors = [{ instancePath: instancePath + "/title", schemaPath: "#/properties/title/maxLength", keyword: "maxLength", params: { limit: 200 }, message: "must NOT have more than 200 characters" }];
                        return false;
                      } else {
                        if (func2(data3) < 1) {
                          validate52.errors = [{ instancePath: instancePath + "/title", schemaPath: "#/properties/title/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
                          return false;
                        }
                      }
                    } else {
                      validate52.errors = [{ instancePath: instancePath + "/title", schemaPath: "#/properties/title/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                      return false;
                    }
                  }
                  var valid0 = _errs6 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.notes !== void 0) {
                    let data4 = data.notes;
                    const _errs8 = errors;
                    const _errs9 = errors;
                    let valid1 = false;
                    const _errs10 = errors;
                    if (typeof data4 !== "string") {
                      const err0 = { instancePath: instancePath + "/notes", schemaPath: "#/properties/notes/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err0];
                      } else {
                        vErrors.push(err0);
                      }
                      errors++;
                    }
                    var _valid0 = _errs10 === errors;
                    valid1 = valid1 || _valid0;
                    const _errs12 = errors;
                    if (errors === _errs12) {
                      if (Array.isArray(data4)) {
                        var valid2 = true;
                        const len0 = data4.length;
                        for (let i0 = 0; i0 < len0; i0++) {
                          const _errs14 = errors;
                          if (typeof data4[i0] !== "string") {
                            const err1 = { instancePath: instancePath + "/notes/" + i0, schemaPath: "#/properties/notes/anyOf/1/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                            if (vErrors === null) {
                              vErrors = [err1];
                            } else {
                              vErrors.push(err1);
                            }
                            errors++;
                          }
                          var valid2 = _errs14 === errors;
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
                    var _valid0 = _errs12 === errors;
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
                  if (valid0) {
                    if (data.materials !== void 0) {
                      let data6 = data.materials;
                      const _errs16 = errors;
                      if (errors === _errs16) {
                        if (Array.isArray(data6)) {
                          var valid3 = true;
                          const len1 = data6.length;
                          for (let i1 = 0; i1 < len1; i1++) {
                            const _errs18 = errors;
                            if (!validate53(data6[i1], { instancePath: instancePath + "/materials/" + i1, parentData: data6, parentDataProperty: i1, rootData, dynamicAnchors })) {
                              vErrors = vErrors === null ? validate53.errors : vErrors.concat(validate53.errors);
                              errors = vErrors.length;
                            }
                            var valid3 = _errs18 === errors;
                            if (!valid3) {
                              break;
                            }
                          }
                        } else {
                          validate52.errors = [{ instancePath: instancePath + "/materials", schemaPath: "#/properties/materials/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                          return false;
                        }
                      }
                      var valid0 = _errs16 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.series !== void 0) {
                        let data8 = data.series;
                        const _errs19 = errors;
                        if (errors === _errs19) {
                          if (Array.isArray(data8)) {
                            var valid4 = true;
                            const len2 = data8.length;
                            for (let i2 = 0; i2 < len2; i2++) {
                              const _errs21 = errors;
                              if (!validate68(data8[i2], { instancePath: instancePath + "/series/" + i2, parentData: data8, parentDataProperty: i2, rootData, dynamicAnchors })) {
                                vErrors = vErrors === null ? validate68.errors : vErrors.concat(validate68.errors);
                                errors = vErrors.length;
                              }
                              var valid4 = _errs21 === errors;
                              if (!valid4) {
                                break;
                              }
                            }
                          } else {
                            validate52.errors = [{ instancePath: instancePath + "/series", schemaPath: "#/properties/series/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                            return false;
                          }
                        }
                        var valid0 = _errs19 === errors;
                      } else {
                        var valid0 = true;
                      }
                      if (valid0) {
                        if (data.profiles !== void 0) {
                          let data10 = data.profiles;
                          const _errs22 = errors;
                          if (errors === _errs22) {
                            if (Array.isArray(data10)) {
                              var valid5 = true;
                              const len3 = data10.length;
                              for (let i3 = 0; i3 < len3; i3++) {
                                const _errs24 = errors;
                                if (!validate107(data10[i3], { instancePath: instancePath + "/profiles/" + i3, parentData: data10, parentDataProperty: i3, rootData, dynamicAnchors })) {
                                  vErrors = vErrors === null ? validate107.errors : vErrors.concat(validate107.errors);
                                  errors = vErrors.length;
                                }
                                var valid5 = _errs24 === errors;
                                if (!valid5) {
                                  break;
                                }
                              }
                            } else {
                              validate52.errors = [{ instancePath: instancePath + "/profiles", schemaPath: "#/properties/profiles/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                              return false;
                            }
                          }
                          var valid0 = _errs22 === errors;
                        } else {
                          var valid0 = true;
                        }
                        if (valid0) {
                          if (data.connectors !== void 0) {
                            let data12 = data.connectors;
                            const _errs25 = errors;
                            if (errors === _errs25) {
                              if (Array.isArray(data12)) {
                                var valid6 = true;
                                const len4 = data12.length;
                                for (let i4 = 0; i4 < len4; i4++) {
                                  const _errs27 = errors;
                                  if (!validate145(data12[i4], { instancePath: instancePath + "/connectors/" + i4, parentData: data12, parentDataProperty: i4, rootData, dynamicAnchors })) {
                                    vErrors = vErrors === null ? validate145.errors : vErrors.concat(validate145.errors);
                                    errors = vErrors.length;
                                  }
                                  var valid6 = _errs27 === errors;
                                  if (!valid6) {
                                    break;
                                  }
                                }
                              } else {
                                validate52.errors = [{ instancePath: instancePath + "/connectors", schemaPath: "#/properties/connectors/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                return false;
                              }
                            }
                            var valid0 = _errs25 === errors;
                          } else {
                            var valid0 = true;
                          }
                          if (valid0) {
                            if (data.screws !== void 0) {
                              let data14 = data.screws;
                              const _errs28 = errors;
                              if (errors === _errs28) {
                                if (Array.isArray(data14)) {
                                  var valid7 = true;
                                  const len5 = data14.length;
                                  for (let i5 = 0; i5 < len5; i5++) {
                                    const _errs30 = errors;
                                    if (!validate227(data14[i5], { instancePath: instancePath + "/screws/" + i5, parentData: data14, parentDataProperty: i5, rootData, dynamicAnchors })) {
                                      vErrors = vErrors === null ? validate227.errors : vErrors.concat(validate227.errors);
                                      errors = vErrors.length;
                                    }
                                    var valid7 = _errs30 === errors;
                                    if (!valid7) {
                                      break;
                                    }
                                  }
                                } else {
                                  validate52.errors = [{ instancePath: instancePath + "/screws", schemaPath: "#/properties/screws/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                  return false;
                                }
                              }
                              var valid0 = _errs28 === errors;
                            } else {
                              var valid0 = true;
                            }
                            if (valid0) {
                              if (data.nuts !== void 0) {
                                let data16 = data.nuts;
                                const _errs31 = errors;
                                if (errors === _errs31) {
                                  if (Array.isArray(data16)) {
                                    var valid8 = true;
                                    const len6 = data16.length;
                                    for (let i6 = 0; i6 < len6; i6++) {
                                      const _errs33 = errors;
                                      if (!validate240(data16[i6], { instancePath: instancePath + "/nuts/" + i6, parentData: data16, parentDataProperty: i6, rootData, dynamicAnchors })) {
                                        vErrors = vErrors === null ? validate240.errors : vErrors.concat(validate240.errors);
                                        errors = vErrors.length;
                                      }
                                      var valid8 = _errs33 === errors;
                                      if (!valid8) {
                                        break;
                                      }
                                    }
                                  } else {
                                    validate52.errors = [{ instancePath: instancePath + "/nuts", schemaPath: "#/properties/nuts/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                    return false;
                                  }
                                }
                                var valid0 = _errs31 === errors;
                              } else {
                                var valid0 = true;
                              }
                              if (valid0) {
                                if (data.caps !== void 0) {
                                  let data18 = data.caps;
                                  const _errs34 = errors;
                                  if (errors === _errs34) {
                                    if (Array.isArray(data18)) {
                                      var valid9 = true;
                                      const len7 = data18.length;
                                      for (let i7 = 0; i7 < len7; i7++) {
                                        const _errs36 = errors;
                                        if (!validate249(data18[i7], { instancePath: instancePath + "/caps/" + i7, parentData: data18, parentDataProperty: i7, rootData, dynamicAnchors })) {
                                          vErrors = vErrors === null ? validate249.errors : vErrors.concat(validate249.errors);
                                          errors = vErrors.length;
                                        }
                                        var valid9 = _errs36 === errors;
                                        if (!valid9) {
                                          break;
                                        }
                                      }
                                    } else {
                                      validate52.errors = [{ instancePath: instancePath + "/caps", schemaPath: "#/properties/caps/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                      return false;
                                    }
                                  }
                                  var valid0 = _errs34 === errors;
                                } else {
                                  var valid0 = true;
                                }
                                if (valid0) {
                                  if (data.stands !== void 0) {
                                    let data20 = data.stands;
                                    const _errs37 = errors;
                                    if (errors === _errs37) {
                                      if (Array.isArray(data20)) {
                                        var valid10 = true;
                                        const len8 = data20.length;
                                        for (let i8 = 0; i8 < len8; i8++) {
                                          const _errs39 = errors;
                                          if (!validate255(data20[i8], { instancePath: instancePath + "/stands/" + i8, parentData: data20, parentDataProperty: i8, rootData, dynamicAnchors })) {
                                            vErrors = vErrors === null ? validate255.errors : vErrors.concat(validate255.errors);
                                            errors = vErrors.length;
                                          }
                                          var valid10 = _errs39 === errors;
                                          if (!valid10) {
                                            break;
                                          }
                                        }
                                      } else {
                                        validate52.errors = [{ instancePath: instancePath + "/stands", schemaPath: "#/properties/stands/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                        return false;
                                      }
                                    }
                                    var valid0 = _errs37 === errors;
                                  } else {
                                    var valid0 = true;
                                  }
                                  if (valid0) {
                                    if (data.sheets !== void 0) {
                                      let data22 = data.sheets;
                                      const _errs40 = errors;
                                      if (errors === _errs40) {
                                        if (Array.isArray(data22)) {
                                          var valid11 = true;
                                          const len9 = data22.length;
                                          for (let i9 = 0; i9 < len9; i9++) {
                                            const _errs42 = errors;
                                            if (!validate274(data22[i9], { instancePath: instancePath + "/sheets/" + i9, parentData: data22, parentDataProperty: i9, rootData, dynamicAnchors })) {
                                              vErrors = vErrors === null ? validate274.errors : vErrors.concat(validate274.errors);
                                              errors = vErrors.length;
                                            }
                                            var valid11 = _errs42 === errors;
                                            if (!valid11) {
                                              break;
                                            }
                                          }
                                        } else {
                                          validate52.errors = [{ instancePath: instancePath + "/sheets", schemaPath: "#/properties/sheets/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                          return false;
                                        }
                                      }
                                      var valid0 = _errs40 === errors;
                                    } else {
                                      var valid0 = true;
                                    }
                                    if (valid0) {
                                      if (data.gaskets !== void 0) {
                                        let data24 = data.gaskets;
                                        const _errs43 = errors;
                                        if (errors === _errs43) {
                                          if (Array.isArray(data24)) {
                                            var valid12 = true;
                                            const len10 = data24.length;
                                            for (let i10 = 0; i10 < len10; i10++) {
                                              const _errs45 = errors;
                                              if (!validate284(data24[i10], { instancePath: instancePath + "/gaskets/" + i10, parentData: data24, parentDataProperty: i10, rootData, dynamicAnchors })) {
                                                vErrors = vErrors === null ? validate284.errors : vErrors.concat(validate284.errors);
                                                errors = vErrors.length;
                                              }
                                              var valid12 = _errs45 === errors;
                                              if (!valid12) {
                                                break;
                                              }
                                            }
                                          } else {
                                            validate52.errors = [{ instancePath: instancePath + "/gaskets", schemaPath: "#/properties/gaskets/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                            return false;
                                          }
                                        }
                                        var valid0 = _errs43 === errors;
                                      } else {
                                        var valid0 = true;
                                      }
                                      if (valid0) {
                                        if (data.tools !== void 0) {
                                          let data26 = data.tools;
                                          const _errs46 = errors;
                                          if (errors === _errs46) {
                                            if (Array.isArray(data26)) {
                                              var valid13 = true;
                                              const len11 = data26.length;
                                              for (let i11 = 0; i11 < len11; i11++) {
                                                const _errs48 = errors;
                                                if (!validate290(data26[i11], { instancePath: instancePath + "/tools/" + i11, parentData: data26, parentDataProperty: i11, rootData, dynamicAnchors })) {
                                                  vErrors = vErrors === null ? validate290.errors : vErrors.concat(validate290.errors);
                                                  errors = vErrors.length;
                                                }
                                                var valid13 = _errs48 === errors;
                                                if (!valid13) {
                                                  break;
                                                }
                                              }
                                            } else {
                                              validate52.errors = [{ instancePath: instancePath + "/tools", schemaPath: "#/properties/tools/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                              return false;
                                            }
                                          }
                                          var valid0 = _errs46 === errors;
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
