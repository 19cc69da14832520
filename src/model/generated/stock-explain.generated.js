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
  if (typeof data === "string") {
    if (func2(data) > 120) {
      const err0 = { instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (func2(data) < 1) {
      const err1 = { instancePath, schemaPath: "#/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "string" }, message: "must be string" };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
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
    const err0 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: schema22.type }, message: "must be number,string" };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  if (typeof data === "string") {
    if (func2(data) > 64) {
      const err1 = { instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
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
    const err0 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: schema23.type }, message: "must be number,string" };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  if (typeof data === "string") {
    if (func2(data) > 64) {
      const err1 = { instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
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
  if (typeof data == "number" && isFinite(data)) {
    if (data > 1e-3 || isNaN(data)) {
      const err0 = { instancePath, schemaPath: "#/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e-3 }, message: "must be <= 0.001" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data < 0 || isNaN(data)) {
      const err1 = { instancePath, schemaPath: "#/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "number" }, message: "must be number" };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
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
  if (typeof data === "string") {
    if (func2(data) > 400) {
      const err0 = { instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 400 }, message: "must NOT have more than 400 characters" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (func2(data) < 1) {
      const err1 = { instancePath, schemaPath: "#/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "string" }, message: "must be string" };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.name === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.elasticModulus === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "elasticModulus" }, message: "must have required property 'elasticModulus'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.shearModulus === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "shearModulus" }, message: "must have required property 'shearModulus'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.density === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "density" }, message: "must have required property 'density'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.expansion === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "expansion" }, message: "must have required property 'expansion'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.proof === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "proof" }, message: "must have required property 'proof'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.ultimate === void 0) {
      const err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "ultimate" }, message: "must have required property 'ultimate'" };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    if (data.bucklingClass === void 0) {
      const err7 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "bucklingClass" }, message: "must have required property 'bucklingClass'" };
      if (vErrors === null) {
        vErrors = [err7];
      } else {
        vErrors.push(err7);
      }
      errors++;
    }
    if (data.source === void 0) {
      const err8 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "source" }, message: "must have required property 'source'" };
      if (vErrors === null) {
        vErrors = [err8];
      } else {
        vErrors.push(err8);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func1.call(schema20.properties, key0)) {
        const err9 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
    }
    if (data.name !== void 0) {
      if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.elasticModulus !== void 0) {
      if (!validate56(data.elasticModulus, { instancePath: instancePath + "/elasticModulus", parentData: data, parentDataProperty: "elasticModulus", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate56.errors : vErrors.concat(validate56.errors);
        errors = vErrors.length;
      }
    }
    if (data.shearModulus !== void 0) {
      if (!validate56(data.shearModulus, { instancePath: instancePath + "/shearModulus", parentData: data, parentDataProperty: "shearModulus", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate56.errors : vErrors.concat(validate56.errors);
        errors = vErrors.length;
      }
    }
    if (data.density !== void 0) {
      if (!validate59(data.density, { instancePath: instancePath + "/density", parentData: data, parentDataProperty: "density", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate59.errors : vErrors.concat(validate59.errors);
        errors = vErrors.length;
      }
    }
    if (data.expansion !== void 0) {
      if (!validate61(data.expansion, { instancePath: instancePath + "/expansion", parentData: data, parentDataProperty: "expansion", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate61.errors : vErrors.concat(validate61.errors);
        errors = vErrors.length;
      }
    }
    if (data.proof !== void 0) {
      if (!validate56(data.proof, { instancePath: instancePath + "/proof", parentData: data, parentDataProperty: "proof", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate56.errors : vErrors.concat(validate56.errors);
        errors = vErrors.length;
      }
    }
    if (data.ultimate !== void 0) {
      if (!validate56(data.ultimate, { instancePath: instancePath + "/ultimate", parentData: data, parentDataProperty: "ultimate", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate56.errors : vErrors.concat(validate56.errors);
        errors = vErrors.length;
      }
    }
    if (data.bucklingClass !== void 0) {
      let data7 = data.bucklingClass;
      if (!(data7 === "A" || data7 === "B")) {
        const err10 = { instancePath: instancePath + "/bucklingClass", schemaPath: "#/properties/bucklingClass/enum", keyword: "enum", params: { allowedValues: schema20.properties.bucklingClass.enum }, message: "must be equal to one of the allowed values" };
        if (vErrors === null) {
          vErrors = [err10];
        } else {
          vErrors.push(err10);
        }
        errors++;
      }
    }
    if (data.source !== void 0) {
      if (!validate65(data.source, { instancePath: instancePath + "/source", parentData: data, parentDataProperty: "source", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err11 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err11];
    } else {
      vErrors.push(err11);
    }
    errors++;
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
  if (typeof data === "string") {
    if (func2(data) > 400) {
      const err0 = { instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 400 }, message: "must NOT have more than 400 characters" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
  } else {
    const err1 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "string" }, message: "must be string" };
    if (vErrors === null) {
      vErrors = [err1];
    } else {
      vErrors.push(err1);
    }
    errors++;
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
    const err0 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: schema28.type }, message: "must be number,string" };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  if (typeof data === "string") {
    if (func2(data) > 64) {
      const err1 = { instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
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
  if (typeof data === "string") {
    if (func2(data) > 40) {
      const err0 = { instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 40 }, message: "must NOT have more than 40 characters" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (func2(data) < 1) {
      const err1 = { instancePath, schemaPath: "#/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "string" }, message: "must be string" };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
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
    const err0 = { instancePath, schemaPath: "#/enum", keyword: "enum", params: { allowedValues: schema30.enum }, message: "must be equal to one of the allowed values" };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
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
  if (typeof data === "string") {
    if (func2(data) > 120) {
      const err0 = { instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (func2(data) < 1) {
      const err1 = { instancePath, schemaPath: "#/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "string" }, message: "must be string" };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.opening === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "opening" }, message: "must have required property 'opening'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.lip === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "lip" }, message: "must have required property 'lip'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.cavity === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "cavity" }, message: "must have required property 'cavity'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.depth === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "depth" }, message: "must have required property 'depth'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === "opening" || key0 === "lip" || key0 === "cavity" || key0 === "depth" || key0 === "web")) {
        const err4 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.opening !== void 0) {
      if (!validate72(data.opening, { instancePath: instancePath + "/opening", parentData: data, parentDataProperty: "opening", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.lip !== void 0) {
      if (!validate72(data.lip, { instancePath: instancePath + "/lip", parentData: data, parentDataProperty: "lip", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.cavity !== void 0) {
      if (!validate72(data.cavity, { instancePath: instancePath + "/cavity", parentData: data, parentDataProperty: "cavity", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.depth !== void 0) {
      if (!validate72(data.depth, { instancePath: instancePath + "/depth", parentData: data, parentDataProperty: "depth", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.web !== void 0) {
      if (!validate72(data.web, { instancePath: instancePath + "/web", parentData: data, parentDataProperty: "web", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err5 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err5];
    } else {
      vErrors.push(err5);
    }
    errors++;
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
  if (typeof data === "string") {
    if (func2(data) > 40) {
      const err0 = { instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 40 }, message: "must NOT have more than 40 characters" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (func2(data) < 1) {
      const err1 = { instancePath, schemaPath: "#/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "string" }, message: "must be string" };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
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
    const err0 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: schema34.type }, message: "must be number,string" };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  if (typeof data === "string") {
    if (func2(data) > 64) {
      const err1 = { instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
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
  if (Array.isArray(data)) {
    if (data.length > 2) {
      const err0 = { instancePath, schemaPath: "#/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.length < 2) {
      const err1 = { instancePath, schemaPath: "#/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    const len0 = data.length;
    for (let i0 = 0; i0 < len0; i0++) {
      if (!validate72(data[i0], { instancePath: instancePath + "/" + i0, parentData: data, parentDataProperty: i0, rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err2 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "array" }, message: "must be array" };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
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
    const err0 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: schema37.type }, message: "must be number,string" };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  if (typeof data === "string") {
    if (func2(data) > 64) {
      const err1 = { instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    for (const key0 in data) {
      if (!validate103(data[key0], { instancePath: instancePath + "/" + key0.replace(/~/g, "~0").replace(/\//g, "~1"), parentData: data, parentDataProperty: key0, rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err0 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.name === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.pitch === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "pitch" }, message: "must have required property 'pitch'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.slotSize === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "slotSize" }, message: "must have required property 'slotSize'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.weight === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "weight" }, message: "must have required property 'weight'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.material === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "material" }, message: "must have required property 'material'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.stockLength === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "stockLength" }, message: "must have required property 'stockLength'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.slot === void 0) {
      const err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "slot" }, message: "must have required property 'slot'" };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func1.call(schema26.properties, key0)) {
        const err7 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err7];
        } else {
          vErrors.push(err7);
        }
        errors++;
      }
    }
    if (data.name !== void 0) {
      if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.about !== void 0) {
      if (!validate70(data.about, { instancePath: instancePath + "/about", parentData: data, parentDataProperty: "about", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate70.errors : vErrors.concat(validate70.errors);
        errors = vErrors.length;
      }
    }
    if (data.pitch !== void 0) {
      if (!validate72(data.pitch, { instancePath: instancePath + "/pitch", parentData: data, parentDataProperty: "pitch", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.slotSize !== void 0) {
      if (!validate74(data.slotSize, { instancePath: instancePath + "/slotSize", parentData: data, parentDataProperty: "slotSize", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
        errors = vErrors.length;
      }
    }
    if (data.weight !== void 0) {
      if (!validate76(data.weight, { instancePath: instancePath + "/weight", parentData: data, parentDataProperty: "weight", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors);
        errors = vErrors.length;
      }
    }
    if (data.material !== void 0) {
      if (!validate78(data.material, { instancePath: instancePath + "/material", parentData: data, parentDataProperty: "material", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate78.errors : vErrors.concat(validate78.errors);
        errors = vErrors.length;
      }
    }
    if (data.stockLength !== void 0) {
      if (!validate72(data.stockLength, { instancePath: instancePath + "/stockLength", parentData: data, parentDataProperty: "stockLength", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.slot !== void 0) {
      if (!validate81(data.slot, { instancePath: instancePath + "/slot", parentData: data, parentDataProperty: "slot", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate81.errors : vErrors.concat(validate81.errors);
        errors = vErrors.length;
      }
    }
    if (data.bore !== void 0) {
      let data8 = data.bore;
      if (data8 && typeof data8 == "object" && !Array.isArray(data8)) {
        if (data8.diameter === void 0) {
          const err8 = { instancePath: instancePath + "/bore", schemaPath: "#/properties/bore/required", keyword: "required", params: { missingProperty: "diameter" }, message: "must have required property 'diameter'" };
          if (vErrors === null) {
            vErrors = [err8];
          } else {
            vErrors.push(err8);
          }
          errors++;
        }
        if (data8.thread === void 0) {
          const err9 = { instancePath: instancePath + "/bore", schemaPath: "#/properties/bore/required", keyword: "required", params: { missingProperty: "thread" }, message: "must have required property 'thread'" };
          if (vErrors === null) {
            vErrors = [err9];
          } else {
            vErrors.push(err9);
          }
          errors++;
        }
        for (const key1 in data8) {
          if (!(key1 === "diameter" || key1 === "thread")) {
            const err10 = { instancePath: instancePath + "/bore", schemaPath: "#/properties/bore/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties" };
            if (vErrors === null) {
              vErrors = [err10];
            } else {
              vErrors.push(err10);
            }
            errors++;
          }
        }
        if (data8.diameter !== void 0) {
          if (!validate72(data8.diameter, { instancePath: instancePath + "/bore/diameter", parentData: data8, parentDataProperty: "diameter", rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
            errors = vErrors.length;
          }
        }
        if (data8.thread !== void 0) {
          if (!validate89(data8.thread, { instancePath: instancePath + "/bore/thread", parentData: data8, parentDataProperty: "thread", rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate89.errors : vErrors.concat(validate89.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err11 = { instancePath: instancePath + "/bore", schemaPath: "#/properties/bore/type", keyword: "type", params: { type: "object" }, message: "must be object" };
        if (vErrors === null) {
          vErrors = [err11];
        } else {
          vErrors.push(err11);
        }
        errors++;
      }
    }
    if (data.cornerRadius !== void 0) {
      if (!validate72(data.cornerRadius, { instancePath: instancePath + "/cornerRadius", parentData: data, parentDataProperty: "cornerRadius", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.cornerWall !== void 0) {
      if (!validate72(data.cornerWall, { instancePath: instancePath + "/cornerWall", parentData: data, parentDataProperty: "cornerWall", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.cellWall !== void 0) {
      if (!validate72(data.cellWall, { instancePath: instancePath + "/cellWall", parentData: data, parentDataProperty: "cellWall", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.closedWall !== void 0) {
      if (!validate72(data.closedWall, { instancePath: instancePath + "/closedWall", parentData: data, parentDataProperty: "closedWall", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.chordError !== void 0) {
      if (!validate72(data.chordError, { instancePath: instancePath + "/chordError", parentData: data, parentDataProperty: "chordError", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.lipRating !== void 0) {
      if (!validate96(data.lipRating, { instancePath: instancePath + "/lipRating", parentData: data, parentDataProperty: "lipRating", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate96.errors : vErrors.concat(validate96.errors);
        errors = vErrors.length;
      }
    }
    if (data.lipSource !== void 0) {
      if (!validate65(data.lipSource, { instancePath: instancePath + "/lipSource", parentData: data, parentDataProperty: "lipSource", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
        errors = vErrors.length;
      }
    }
    if (data.ratedNut !== void 0) {
      if (!validate99(data.ratedNut, { instancePath: instancePath + "/ratedNut", parentData: data, parentDataProperty: "ratedNut", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate99.errors : vErrors.concat(validate99.errors);
        errors = vErrors.length;
      }
    }
    if (data.torques !== void 0) {
      if (!validate102(data.torques, { instancePath: instancePath + "/torques", parentData: data, parentDataProperty: "torques", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate102.errors : vErrors.concat(validate102.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err12 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err12];
    } else {
      vErrors.push(err12);
    }
    errors++;
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
    const err0 = { instancePath, schemaPath: "#/enum", keyword: "enum", params: { allowedValues: schema40.enum }, message: "must be equal to one of the allowed values" };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.kind === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "kind" }, message: "must have required property 'kind'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.name === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.series === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "series" }, message: "must have required property 'series'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.columns === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "columns" }, message: "must have required property 'columns'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.rows === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "rows" }, message: "must have required property 'rows'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === "kind" || key0 === "name" || key0 === "about" || key0 === "series" || key0 === "columns" || key0 === "rows" || key0 === "closed")) {
        const err5 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err5];
        } else {
          vErrors.push(err5);
        }
        errors++;
      }
    }
    if (data.kind !== void 0) {
      if ("generated" !== data.kind) {
        const err6 = { instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/const", keyword: "const", params: { allowedValue: "generated" }, message: "must be equal to constant" };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
    }
    if (data.name !== void 0) {
      if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.about !== void 0) {
      if (!validate70(data.about, { instancePath: instancePath + "/about", parentData: data, parentDataProperty: "about", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate70.errors : vErrors.concat(validate70.errors);
        errors = vErrors.length;
      }
    }
    if (data.series !== void 0) {
      if (!validate78(data.series, { instancePath: instancePath + "/series", parentData: data, parentDataProperty: "series", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate78.errors : vErrors.concat(validate78.errors);
        errors = vErrors.length;
      }
    }
    if (data.columns !== void 0) {
      let data4 = data.columns;
      if (!(typeof data4 == "number" && (!(data4 % 1) && !isNaN(data4)) && isFinite(data4))) {
        const err7 = { instancePath: instancePath + "/columns", schemaPath: "#/properties/columns/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
        if (vErrors === null) {
          vErrors = [err7];
        } else {
          vErrors.push(err7);
        }
        errors++;
      }
      if (typeof data4 == "number" && isFinite(data4)) {
        if (data4 > 8 || isNaN(data4)) {
          const err8 = { instancePath: instancePath + "/columns", schemaPath: "#/properties/columns/maximum", keyword: "maximum", params: { comparison: "<=", limit: 8 }, message: "must be <= 8" };
          if (vErrors === null) {
            vErrors = [err8];
          } else {
            vErrors.push(err8);
          }
          errors++;
        }
        if (data4 < 1 || isNaN(data4)) {
          const err9 = { instancePath: instancePath + "/columns", schemaPath: "#/properties/columns/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
          if (vErrors === null) {
            vErrors = [err9];
          } else {
            vErrors.push(err9);
          }
          errors++;
        }
      }
    }
    if (data.rows !== void 0) {
      let data5 = data.rows;
      if (!(typeof data5 == "number" && (!(data5 % 1) && !isNaN(data5)) && isFinite(data5))) {
        const err10 = { instancePath: instancePath + "/rows", schemaPath: "#/properties/rows/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
        if (vErrors === null) {
          vErrors = [err10];
        } else {
          vErrors.push(err10);
        }
        errors++;
      }
      if (typeof data5 == "number" && isFinite(data5)) {
        if (data5 > 8 || isNaN(data5)) {
          const err11 = { instancePath: instancePath + "/rows", schemaPath: "#/properties/rows/maximum", keyword: "maximum", params: { comparison: "<=", limit: 8 }, message: "must be <= 8" };
          if (vErrors === null) {
            vErrors = [err11];
          } else {
            vErrors.push(err11);
          }
          errors++;
        }
        if (data5 < 1 || isNaN(data5)) {
          const err12 = { instancePath: instancePath + "/rows", schemaPath: "#/properties/rows/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
          if (vErrors === null) {
            vErrors = [err12];
          } else {
            vErrors.push(err12);
          }
          errors++;
        }
      }
    }
    if (data.closed !== void 0) {
      let data6 = data.closed;
      if (Array.isArray(data6)) {
        if (data6.length > 4) {
          const err13 = { instancePath: instancePath + "/closed", schemaPath: "#/properties/closed/maxItems", keyword: "maxItems", params: { limit: 4 }, message: "must NOT have more than 4 items" };
          if (vErrors === null) {
            vErrors = [err13];
          } else {
            vErrors.push(err13);
          }
          errors++;
        }
        if (data6.length < 1) {
          const err14 = { instancePath: instancePath + "/closed", schemaPath: "#/properties/closed/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
          if (vErrors === null) {
            vErrors = [err14];
          } else {
            vErrors.push(err14);
          }
          errors++;
        }
        const len0 = data6.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (!validate112(data6[i0], { instancePath: instancePath + "/closed/" + i0, parentData: data6, parentDataProperty: i0, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate112.errors : vErrors.concat(validate112.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err15 = { instancePath: instancePath + "/closed", schemaPath: "#/properties/closed/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err15];
        } else {
          vErrors.push(err15);
        }
        errors++;
      }
    }
  } else {
    const err16 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err16];
    } else {
      vErrors.push(err16);
    }
    errors++;
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
  if (Array.isArray(data)) {
    if (data.length > 5e3) {
      const err0 = { instancePath, schemaPath: "#/maxItems", keyword: "maxItems", params: { limit: 5e3 }, message: "must NOT have more than 5000 items" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.length < 3) {
      const err1 = { instancePath, schemaPath: "#/minItems", keyword: "minItems", params: { limit: 3 }, message: "must NOT have fewer than 3 items" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    const len0 = data.length;
    for (let i0 = 0; i0 < len0; i0++) {
      if (!validate99(data[i0], { instancePath: instancePath + "/" + i0, parentData: data, parentDataProperty: i0, rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate99.errors : vErrors.concat(validate99.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err2 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "array" }, message: "must be array" };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.face === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "face" }, message: "must have required property 'face'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.across === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "across" }, message: "must have required property 'across'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.opening === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "opening" }, message: "must have required property 'opening'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.lip === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "lip" }, message: "must have required property 'lip'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.depth === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "depth" }, message: "must have required property 'depth'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.cavity === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "cavity" }, message: "must have required property 'cavity'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === "face" || key0 === "across" || key0 === "opening" || key0 === "lip" || key0 === "depth" || key0 === "cavity" || key0 === "closed")) {
        const err6 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
    }
    if (data.face !== void 0) {
      if (!validate112(data.face, { instancePath: instancePath + "/face", parentData: data, parentDataProperty: "face", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate112.errors : vErrors.concat(validate112.errors);
        errors = vErrors.length;
      }
    }
    if (data.across !== void 0) {
      if (!validate72(data.across, { instancePath: instancePath + "/across", parentData: data, parentDataProperty: "across", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.opening !== void 0) {
      if (!validate72(data.opening, { instancePath: instancePath + "/opening", parentData: data, parentDataProperty: "opening", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.lip !== void 0) {
      if (!validate72(data.lip, { instancePath: instancePath + "/lip", parentData: data, parentDataProperty: "lip", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.depth !== void 0) {
      if (!validate72(data.depth, { instancePath: instancePath + "/depth", parentData: data, parentDataProperty: "depth", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.cavity !== void 0) {
      if (!validate72(data.cavity, { instancePath: instancePath + "/cavity", parentData: data, parentDataProperty: "cavity", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.closed !== void 0) {
      if (typeof data.closed !== "boolean") {
        const err7 = { instancePath: instancePath + "/closed", schemaPath: "#/properties/closed/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" };
        if (vErrors === null) {
          vErrors = [err7];
        } else {
          vErrors.push(err7);
        }
        errors++;
      }
    }
  } else {
    const err8 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err8];
    } else {
      vErrors.push(err8);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.at === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "at" }, message: "must have required property 'at'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.diameter === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "diameter" }, message: "must have required property 'diameter'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.thread === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "thread" }, message: "must have required property 'thread'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === "at" || key0 === "diameter" || key0 === "thread")) {
        const err3 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.at !== void 0) {
      if (!validate99(data.at, { instancePath: instancePath + "/at", parentData: data, parentDataProperty: "at", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate99.errors : vErrors.concat(validate99.errors);
        errors = vErrors.length;
      }
    }
    if (data.diameter !== void 0) {
      if (!validate72(data.diameter, { instancePath: instancePath + "/diameter", parentData: data, parentDataProperty: "diameter", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.thread !== void 0) {
      if (!validate89(data.thread, { instancePath: instancePath + "/thread", parentData: data, parentDataProperty: "thread", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate89.errors : vErrors.concat(validate89.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err4 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err4];
    } else {
      vErrors.push(err4);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.kind === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "kind" }, message: "must have required property 'kind'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.name === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.pitch === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "pitch" }, message: "must have required property 'pitch'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.slotSize === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "slotSize" }, message: "must have required property 'slotSize'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.weight === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "weight" }, message: "must have required property 'weight'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.material === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "material" }, message: "must have required property 'material'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.stockLength === void 0) {
      const err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "stockLength" }, message: "must have required property 'stockLength'" };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    if (data.lipRating === void 0) {
      const err7 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "lipRating" }, message: "must have required property 'lipRating'" };
      if (vErrors === null) {
        vErrors = [err7];
      } else {
        vErrors.push(err7);
      }
      errors++;
    }
    if (data.lipSource === void 0) {
      const err8 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "lipSource" }, message: "must have required property 'lipSource'" };
      if (vErrors === null) {
        vErrors = [err8];
      } else {
        vErrors.push(err8);
      }
      errors++;
    }
    if (data.outline === void 0) {
      const err9 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "outline" }, message: "must have required property 'outline'" };
      if (vErrors === null) {
        vErrors = [err9];
      } else {
        vErrors.push(err9);
      }
      errors++;
    }
    if (data.slots === void 0) {
      const err10 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "slots" }, message: "must have required property 'slots'" };
      if (vErrors === null) {
        vErrors = [err10];
      } else {
        vErrors.push(err10);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func1.call(schema41.properties, key0)) {
        const err11 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err11];
        } else {
          vErrors.push(err11);
        }
        errors++;
      }
    }
    if (data.kind !== void 0) {
      if ("drawn" !== data.kind) {
        const err12 = { instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/const", keyword: "const", params: { allowedValue: "drawn" }, message: "must be equal to constant" };
        if (vErrors === null) {
          vErrors = [err12];
        } else {
          vErrors.push(err12);
        }
        errors++;
      }
    }
    if (data.name !== void 0) {
      if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.about !== void 0) {
      if (!validate70(data.about, { instancePath: instancePath + "/about", parentData: data, parentDataProperty: "about", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate70.errors : vErrors.concat(validate70.errors);
        errors = vErrors.length;
      }
    }
    if (data.pitch !== void 0) {
      if (!validate72(data.pitch, { instancePath: instancePath + "/pitch", parentData: data, parentDataProperty: "pitch", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.slotSize !== void 0) {
      if (!validate74(data.slotSize, { instancePath: instancePath + "/slotSize", parentData: data, parentDataProperty: "slotSize", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
        errors = vErrors.length;
      }
    }
    if (data.weight !== void 0) {
      if (!validate76(data.weight, { instancePath: instancePath + "/weight", parentData: data, parentDataProperty: "weight", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors);
        errors = vErrors.length;
      }
    }
    if (data.material !== void 0) {
      if (!validate78(data.material, { instancePath: instancePath + "/material", parentData: data, parentDataProperty: "material", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate78.errors : vErrors.concat(validate78.errors);
        errors = vErrors.length;
      }
    }
    if (data.stockLength !== void 0) {
      if (!validate72(data.stockLength, { instancePath: instancePath + "/stockLength", parentData: data, parentDataProperty: "stockLength", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.lipRating !== void 0) {
      if (!validate96(data.lipRating, { instancePath: instancePath + "/lipRating", parentData: data, parentDataProperty: "lipRating", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate96.errors : vErrors.concat(validate96.errors);
        errors = vErrors.length;
      }
    }
    if (data.lipSource !== void 0) {
      if (!validate65(data.lipSource, { instancePath: instancePath + "/lipSource", parentData: data, parentDataProperty: "lipSource", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
        errors = vErrors.length;
      }
    }
    if (data.torques !== void 0) {
      if (!validate102(data.torques, { instancePath: instancePath + "/torques", parentData: data, parentDataProperty: "torques", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate102.errors : vErrors.concat(validate102.errors);
        errors = vErrors.length;
      }
    }
    if (data.outline !== void 0) {
      if (!validate125(data.outline, { instancePath: instancePath + "/outline", parentData: data, parentDataProperty: "outline", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate125.errors : vErrors.concat(validate125.errors);
        errors = vErrors.length;
      }
    }
    if (data.holes !== void 0) {
      let data12 = data.holes;
      if (Array.isArray(data12)) {
        const len0 = data12.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (!validate125(data12[i0], { instancePath: instancePath + "/holes/" + i0, parentData: data12, parentDataProperty: i0, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate125.errors : vErrors.concat(validate125.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err13 = { instancePath: instancePath + "/holes", schemaPath: "#/properties/holes/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err13];
        } else {
          vErrors.push(err13);
        }
        errors++;
      }
    }
    if (data.slots !== void 0) {
      let data14 = data.slots;
      if (Array.isArray(data14)) {
        const len1 = data14.length;
        for (let i1 = 0; i1 < len1; i1++) {
          if (!validate129(data14[i1], { instancePath: instancePath + "/slots/" + i1, parentData: data14, parentDataProperty: i1, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate129.errors : vErrors.concat(validate129.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err14 = { instancePath: instancePath + "/slots", schemaPath: "#/properties/slots/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err14];
        } else {
          vErrors.push(err14);
        }
        errors++;
      }
    }
    if (data.bores !== void 0) {
      let data16 = data.bores;
      if (Array.isArray(data16)) {
        const len2 = data16.length;
        for (let i2 = 0; i2 < len2; i2++) {
          if (!validate137(data16[i2], { instancePath: instancePath + "/bores/" + i2, parentData: data16, parentDataProperty: i2, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate137.errors : vErrors.concat(validate137.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err15 = { instancePath: instancePath + "/bores", schemaPath: "#/properties/bores/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err15];
        } else {
          vErrors.push(err15);
        }
        errors++;
      }
    }
  } else {
    const err16 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err16];
    } else {
      vErrors.push(err16);
    }
    errors++;
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
        const err0 = { instancePath, schemaPath: "#/discriminator", keyword: "discriminator", params: { error: "mapping", tag: "kind", tagValue: tag0 }, message: 'value of tag "kind" must be in oneOf' };
        if (vErrors === null) {
          vErrors = [err0];
        } else {
          vErrors.push(err0);
        }
        errors++;
      }
    } else {
      const err1 = { instancePath, schemaPath: "#/discriminator", keyword: "discriminator", params: { error: "tag", tag: "kind", tagValue: tag0 }, message: 'tag "kind" must be string' };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
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
    const err0 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: schema47.type }, message: "must be number,string" };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  if (typeof data === "string") {
    if (func2(data) > 64) {
      const err1 = { instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
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
    const err0 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: schema49.type }, message: "must be number,string" };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  if (typeof data === "string") {
    if (func2(data) > 64) {
      const err1 = { instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.reference === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "reference" }, message: "must have required property 'reference'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === "rotationalStiffness" || key0 === "slip" || key0 === "moment" || key0 === "reference")) {
        const err1 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
    }
    if (data.rotationalStiffness !== void 0) {
      if (!validate153(data.rotationalStiffness, { instancePath: instancePath + "/rotationalStiffness", parentData: data, parentDataProperty: "rotationalStiffness", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate153.errors : vErrors.concat(validate153.errors);
        errors = vErrors.length;
      }
    }
    if (data.slip !== void 0) {
      if (!validate96(data.slip, { instancePath: instancePath + "/slip", parentData: data, parentDataProperty: "slip", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate96.errors : vErrors.concat(validate96.errors);
        errors = vErrors.length;
      }
    }
    if (data.moment !== void 0) {
      if (!validate103(data.moment, { instancePath: instancePath + "/moment", parentData: data, parentDataProperty: "moment", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
        errors = vErrors.length;
      }
    }
    if (data.reference !== void 0) {
      if (!validate65(data.reference, { instancePath: instancePath + "/reference", parentData: data, parentDataProperty: "reference", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err2 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.id === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "id" }, message: "must have required property 'id'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.at === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "at" }, message: "must have required property 'at'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.diameter === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "diameter" }, message: "must have required property 'diameter'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === "id" || key0 === "at" || key0 === "diameter")) {
        const err3 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.id !== void 0) {
      let data0 = data.id;
      if (typeof data0 === "string") {
        if (func2(data0) > 20) {
          const err4 = { instancePath: instancePath + "/id", schemaPath: "#/properties/id/maxLength", keyword: "maxLength", params: { limit: 20 }, message: "must NOT have more than 20 characters" };
          if (vErrors === null) {
            vErrors = [err4];
          } else {
            vErrors.push(err4);
          }
          errors++;
        }
        if (!pattern3.test(data0)) {
          const err5 = { instancePath: instancePath + "/id", schemaPath: "#/properties/id/pattern", keyword: "pattern", params: { pattern: "^[a-z][a-z0-9-]*$" }, message: 'must match pattern "^[a-z][a-z0-9-]*$"' };
          if (vErrors === null) {
            vErrors = [err5];
          } else {
            vErrors.push(err5);
          }
          errors++;
        }
      } else {
        const err6 = { instancePath: instancePath + "/id", schemaPath: "#/properties/id/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
    }
    if (data.at !== void 0) {
      if (!validate99(data.at, { instancePath: instancePath + "/at", parentData: data, parentDataProperty: "at", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate99.errors : vErrors.concat(validate99.errors);
        errors = vErrors.length;
      }
    }
    if (data.diameter !== void 0) {
      if (!validate72(data.diameter, { instancePath: instancePath + "/diameter", parentData: data, parentDataProperty: "diameter", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err7 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err7];
    } else {
      vErrors.push(err7);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.length === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "length" }, message: "must have required property 'length'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.thickness === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "thickness" }, message: "must have required property 'thickness'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.holes === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "holes" }, message: "must have required property 'holes'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === "length" || key0 === "thickness" || key0 === "holes")) {
        const err3 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.length !== void 0) {
      if (!validate72(data.length, { instancePath: instancePath + "/length", parentData: data, parentDataProperty: "length", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.thickness !== void 0) {
      if (!validate72(data.thickness, { instancePath: instancePath + "/thickness", parentData: data, parentDataProperty: "thickness", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.holes !== void 0) {
      let data2 = data.holes;
      if (Array.isArray(data2)) {
        if (data2.length < 1) {
          const err4 = { instancePath: instancePath + "/holes", schemaPath: "#/properties/holes/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
          if (vErrors === null) {
            vErrors = [err4];
          } else {
            vErrors.push(err4);
          }
          errors++;
        }
        const len0 = data2.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (!validate162(data2[i0], { instancePath: instancePath + "/holes/" + i0, parentData: data2, parentDataProperty: i0, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate162.errors : vErrors.concat(validate162.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err5 = { instancePath: instancePath + "/holes", schemaPath: "#/properties/holes/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err5];
        } else {
          vErrors.push(err5);
        }
        errors++;
      }
    }
  } else {
    const err6 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err6];
    } else {
      vErrors.push(err6);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.kind === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "kind" }, message: "must have required property 'kind'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.name === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.slotSize === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "slotSize" }, message: "must have required property 'slotSize'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.mass === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "mass" }, message: "must have required property 'mass'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.legs === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "legs" }, message: "must have required property 'legs'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.width === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "width" }, message: "must have required property 'width'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.screw === void 0) {
      const err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "screw" }, message: "must have required property 'screw'" };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func1.call(schema46.properties, key0)) {
        const err7 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err7];
        } else {
          vErrors.push(err7);
        }
        errors++;
      }
    }
    if (data.kind !== void 0) {
      if ("bracket" !== data.kind) {
        const err8 = { instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/const", keyword: "const", params: { allowedValue: "bracket" }, message: "must be equal to constant" };
        if (vErrors === null) {
          vErrors = [err8];
        } else {
          vErrors.push(err8);
        }
        errors++;
      }
    }
    if (data.name !== void 0) {
      if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.about !== void 0) {
      if (!validate70(data.about, { instancePath: instancePath + "/about", parentData: data, parentDataProperty: "about", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate70.errors : vErrors.concat(validate70.errors);
        errors = vErrors.length;
      }
    }
    if (data.slotSize !== void 0) {
      if (!validate74(data.slotSize, { instancePath: instancePath + "/slotSize", parentData: data, parentDataProperty: "slotSize", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
        errors = vErrors.length;
      }
    }
    if (data.mass !== void 0) {
      if (!validate150(data.mass, { instancePath: instancePath + "/mass", parentData: data, parentDataProperty: "mass", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate150.errors : vErrors.concat(validate150.errors);
        errors = vErrors.length;
      }
    }
    if (data.tested !== void 0) {
      if (!validate152(data.tested, { instancePath: instancePath + "/tested", parentData: data, parentDataProperty: "tested", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate152.errors : vErrors.concat(validate152.errors);
        errors = vErrors.length;
      }
    }
    if (data.legs !== void 0) {
      let data6 = data.legs;
      if (data6 && typeof data6 == "object" && !Array.isArray(data6)) {
        if (data6.a === void 0) {
          const err9 = { instancePath: instancePath + "/legs", schemaPath: "#/properties/legs/required", keyword: "required", params: { missingProperty: "a" }, message: "must have required property 'a'" };
          if (vErrors === null) {
            vErrors = [err9];
          } else {
            vErrors.push(err9);
          }
          errors++;
        }
        if (data6.b === void 0) {
          const err10 = { instancePath: instancePath + "/legs", schemaPath: "#/properties/legs/required", keyword: "required", params: { missingProperty: "b" }, message: "must have required property 'b'" };
          if (vErrors === null) {
            vErrors = [err10];
          } else {
            vErrors.push(err10);
          }
          errors++;
        }
        for (const key1 in data6) {
          if (!(key1 === "a" || key1 === "b")) {
            const err11 = { instancePath: instancePath + "/legs", schemaPath: "#/properties/legs/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties" };
            if (vErrors === null) {
              vErrors = [err11];
            } else {
              vErrors.push(err11);
            }
            errors++;
          }
        }
        if (data6.a !== void 0) {
          if (!validate159(data6.a, { instancePath: instancePath + "/legs/a", parentData: data6, parentDataProperty: "a", rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate159.errors : vErrors.concat(validate159.errors);
            errors = vErrors.length;
          }
        }
        if (data6.b !== void 0) {
          if (!validate159(data6.b, { instancePath: instancePath + "/legs/b", parentData: data6, parentDataProperty: "b", rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate159.errors : vErrors.concat(validate159.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err12 = { instancePath: instancePath + "/legs", schemaPath: "#/properties/legs/type", keyword: "type", params: { type: "object" }, message: "must be object" };
        if (vErrors === null) {
          vErrors = [err12];
        } else {
          vErrors.push(err12);
        }
        errors++;
      }
    }
    if (data.width !== void 0) {
      if (!validate72(data.width, { instancePath: instancePath + "/width", parentData: data, parentDataProperty: "width", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.gussets !== void 0) {
      let data10 = data.gussets;
      if (!(typeof data10 == "number" && (!(data10 % 1) && !isNaN(data10)) && isFinite(data10))) {
        const err13 = { instancePath: instancePath + "/gussets", schemaPath: "#/properties/gussets/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
        if (vErrors === null) {
          vErrors = [err13];
        } else {
          vErrors.push(err13);
        }
        errors++;
      }
      if (typeof data10 == "number" && isFinite(data10)) {
        if (data10 > 2 || isNaN(data10)) {
          const err14 = { instancePath: instancePath + "/gussets", schemaPath: "#/properties/gussets/maximum", keyword: "maximum", params: { comparison: "<=", limit: 2 }, message: "must be <= 2" };
          if (vErrors === null) {
            vErrors = [err14];
          } else {
            vErrors.push(err14);
          }
          errors++;
        }
        if (data10 < 0 || isNaN(data10)) {
          const err15 = { instancePath: instancePath + "/gussets", schemaPath: "#/properties/gussets/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
          if (vErrors === null) {
            vErrors = [err15];
          } else {
            vErrors.push(err15);
          }
          errors++;
        }
      }
    }
    if (data.gussetThickness !== void 0) {
      if (!validate72(data.gussetThickness, { instancePath: instancePath + "/gussetThickness", parentData: data, parentDataProperty: "gussetThickness", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.lugs !== void 0) {
      if (typeof data.lugs !== "boolean") {
        const err16 = { instancePath: instancePath + "/lugs", schemaPath: "#/properties/lugs/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" };
        if (vErrors === null) {
          vErrors = [err16];
        } else {
          vErrors.push(err16);
        }
        errors++;
      }
    }
    if (data.screw !== void 0) {
      if (!validate78(data.screw, { instancePath: instancePath + "/screw", parentData: data, parentDataProperty: "screw", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate78.errors : vErrors.concat(validate78.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err17 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err17];
    } else {
      vErrors.push(err17);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.kind === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "kind" }, message: "must have required property 'kind'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.name === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.slotSize === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "slotSize" }, message: "must have required property 'slotSize'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.mass === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "mass" }, message: "must have required property 'mass'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.outline === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "outline" }, message: "must have required property 'outline'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.thickness === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "thickness" }, message: "must have required property 'thickness'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.holes === void 0) {
      const err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "holes" }, message: "must have required property 'holes'" };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    if (data.screw === void 0) {
      const err7 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "screw" }, message: "must have required property 'screw'" };
      if (vErrors === null) {
        vErrors = [err7];
      } else {
        vErrors.push(err7);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func1.call(schema52.properties, key0)) {
        const err8 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err8];
        } else {
          vErrors.push(err8);
        }
        errors++;
      }
    }
    if (data.kind !== void 0) {
      if ("plate" !== data.kind) {
        const err9 = { instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/const", keyword: "const", params: { allowedValue: "plate" }, message: "must be equal to constant" };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
    }
    if (data.name !== void 0) {
      if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.about !== void 0) {
      if (!validate70(data.about, { instancePath: instancePath + "/about", parentData: data, parentDataProperty: "about", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate70.errors : vErrors.concat(validate70.errors);
        errors = vErrors.length;
      }
    }
    if (data.slotSize !== void 0) {
      if (!validate74(data.slotSize, { instancePath: instancePath + "/slotSize", parentData: data, parentDataProperty: "slotSize", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
        errors = vErrors.length;
      }
    }
    if (data.mass !== void 0) {
      if (!validate150(data.mass, { instancePath: instancePath + "/mass", parentData: data, parentDataProperty: "mass", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate150.errors : vErrors.concat(validate150.errors);
        errors = vErrors.length;
      }
    }
    if (data.tested !== void 0) {
      if (!validate152(data.tested, { instancePath: instancePath + "/tested", parentData: data, parentDataProperty: "tested", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate152.errors : vErrors.concat(validate152.errors);
        errors = vErrors.length;
      }
    }
    if (data.outline !== void 0) {
      if (!validate125(data.outline, { instancePath: instancePath + "/outline", parentData: data, parentDataProperty: "outline", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate125.errors : vErrors.concat(validate125.errors);
        errors = vErrors.length;
      }
    }
    if (data.thickness !== void 0) {
      if (!validate72(data.thickness, { instancePath: instancePath + "/thickness", parentData: data, parentDataProperty: "thickness", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.holes !== void 0) {
      let data8 = data.holes;
      if (Array.isArray(data8)) {
        if (data8.length < 1) {
          const err10 = { instancePath: instancePath + "/holes", schemaPath: "#/properties/holes/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
          if (vErrors === null) {
            vErrors = [err10];
          } else {
            vErrors.push(err10);
          }
          errors++;
        }
        const len0 = data8.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (!validate162(data8[i0], { instancePath: instancePath + "/holes/" + i0, parentData: data8, parentDataProperty: i0, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate162.errors : vErrors.concat(validate162.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err11 = { instancePath: instancePath + "/holes", schemaPath: "#/properties/holes/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err11];
        } else {
          vErrors.push(err11);
        }
        errors++;
      }
    }
    if (data.screw !== void 0) {
      if (!validate78(data.screw, { instancePath: instancePath + "/screw", parentData: data, parentDataProperty: "screw", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate78.errors : vErrors.concat(validate78.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err12 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err12];
    } else {
      vErrors.push(err12);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.kind === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "kind" }, message: "must have required property 'kind'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.name === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.slotSize === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "slotSize" }, message: "must have required property 'slotSize'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.mass === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "mass" }, message: "must have required property 'mass'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.screw === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "screw" }, message: "must have required property 'screw'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.depth === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "depth" }, message: "must have required property 'depth'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.keyFrom === void 0) {
      const err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "keyFrom" }, message: "must have required property 'keyFrom'" };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    if (data.keyHole === void 0) {
      const err7 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "keyHole" }, message: "must have required property 'keyHole'" };
      if (vErrors === null) {
        vErrors = [err7];
      } else {
        vErrors.push(err7);
      }
      errors++;
    }
    if (data.body === void 0) {
      const err8 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "body" }, message: "must have required property 'body'" };
      if (vErrors === null) {
        vErrors = [err8];
      } else {
        vErrors.push(err8);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func1.call(schema53.properties, key0)) {
        const err9 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
    }
    if (data.kind !== void 0) {
      if ("end-fastener" !== data.kind) {
        const err10 = { instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/const", keyword: "const", params: { allowedValue: "end-fastener" }, message: "must be equal to constant" };
        if (vErrors === null) {
          vErrors = [err10];
        } else {
          vErrors.push(err10);
        }
        errors++;
      }
    }
    if (data.name !== void 0) {
      if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.about !== void 0) {
      if (!validate70(data.about, { instancePath: instancePath + "/about", parentData: data, parentDataProperty: "about", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate70.errors : vErrors.concat(validate70.errors);
        errors = vErrors.length;
      }
    }
    if (data.slotSize !== void 0) {
      if (!validate74(data.slotSize, { instancePath: instancePath + "/slotSize", parentData: data, parentDataProperty: "slotSize", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
        errors = vErrors.length;
      }
    }
    if (data.mass !== void 0) {
      if (!validate150(data.mass, { instancePath: instancePath + "/mass", parentData: data, parentDataProperty: "mass", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate150.errors : vErrors.concat(validate150.errors);
        errors = vErrors.length;
      }
    }
    if (data.tested !== void 0) {
      if (!validate152(data.tested, { instancePath: instancePath + "/tested", parentData: data, parentDataProperty: "tested", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate152.errors : vErrors.concat(validate152.errors);
        errors = vErrors.length;
      }
    }
    if (data.screw !== void 0) {
      if (!validate78(data.screw, { instancePath: instancePath + "/screw", parentData: data, parentDataProperty: "screw", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate78.errors : vErrors.concat(validate78.errors);
        errors = vErrors.length;
      }
    }
    if (data.depth !== void 0) {
      if (!validate72(data.depth, { instancePath: instancePath + "/depth", parentData: data, parentDataProperty: "depth", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.keyFrom !== void 0) {
      if (!validate72(data.keyFrom, { instancePath: instancePath + "/keyFrom", parentData: data, parentDataProperty: "keyFrom", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.keyHole !== void 0) {
      if (!validate72(data.keyHole, { instancePath: instancePath + "/keyHole", parentData: data, parentDataProperty: "keyHole", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.body !== void 0) {
      if (!validate72(data.body, { instancePath: instancePath + "/body", parentData: data, parentDataProperty: "body", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.lugs !== void 0) {
      if (typeof data.lugs !== "boolean") {
        const err11 = { instancePath: instancePath + "/lugs", schemaPath: "#/properties/lugs/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" };
        if (vErrors === null) {
          vErrors = [err11];
        } else {
          vErrors.push(err11);
        }
        errors++;
      }
    }
  } else {
    const err12 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err12];
    } else {
      vErrors.push(err12);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.kind === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "kind" }, message: "must have required property 'kind'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.name === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.slotSize === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "slotSize" }, message: "must have required property 'slotSize'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.mass === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "mass" }, message: "must have required property 'mass'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.screw === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "screw" }, message: "must have required property 'screw'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.head === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "head" }, message: "must have required property 'head'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.accessHole === void 0) {
      const err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "accessHole" }, message: "must have required property 'accessHole'" };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    if (data.engagement === void 0) {
      const err7 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "engagement" }, message: "must have required property 'engagement'" };
      if (vErrors === null) {
        vErrors = [err7];
      } else {
        vErrors.push(err7);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func1.call(schema54.properties, key0)) {
        const err8 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err8];
        } else {
          vErrors.push(err8);
        }
        errors++;
      }
    }
    if (data.kind !== void 0) {
      if ("end-screw" !== data.kind) {
        const err9 = { instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/const", keyword: "const", params: { allowedValue: "end-screw" }, message: "must be equal to constant" };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
    }
    if (data.name !== void 0) {
      if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.about !== void 0) {
      if (!validate70(data.about, { instancePath: instancePath + "/about", parentData: data, parentDataProperty: "about", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate70.errors : vErrors.concat(validate70.errors);
        errors = vErrors.length;
      }
    }
    if (data.slotSize !== void 0) {
      if (!validate74(data.slotSize, { instancePath: instancePath + "/slotSize", parentData: data, parentDataProperty: "slotSize", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
        errors = vErrors.length;
      }
    }
    if (data.mass !== void 0) {
      if (!validate150(data.mass, { instancePath: instancePath + "/mass", parentData: data, parentDataProperty: "mass", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate150.errors : vErrors.concat(validate150.errors);
        errors = vErrors.length;
      }
    }
    if (data.tested !== void 0) {
      if (!validate152(data.tested, { instancePath: instancePath + "/tested", parentData: data, parentDataProperty: "tested", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate152.errors : vErrors.concat(validate152.errors);
        errors = vErrors.length;
      }
    }
    if (data.screw !== void 0) {
      if (!validate78(data.screw, { instancePath: instancePath + "/screw", parentData: data, parentDataProperty: "screw", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate78.errors : vErrors.concat(validate78.errors);
        errors = vErrors.length;
      }
    }
    if (data.head !== void 0) {
      let data7 = data.head;
      if (!(data7 === "in-slot" || data7 === "on-far-face")) {
        const err10 = { instancePath: instancePath + "/head", schemaPath: "#/properties/head/enum", keyword: "enum", params: { allowedValues: schema54.properties.head.enum }, message: "must be equal to one of the allowed values" };
        if (vErrors === null) {
          vErrors = [err10];
        } else {
          vErrors.push(err10);
        }
        errors++;
      }
    }
    if (data.accessHole !== void 0) {
      if (!validate72(data.accessHole, { instancePath: instancePath + "/accessHole", parentData: data, parentDataProperty: "accessHole", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.engagement !== void 0) {
      if (!validate72(data.engagement, { instancePath: instancePath + "/engagement", parentData: data, parentDataProperty: "engagement", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err11 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err11];
    } else {
      vErrors.push(err11);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.kind === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "kind" }, message: "must have required property 'kind'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.name === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.slotSize === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "slotSize" }, message: "must have required property 'slotSize'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.mass === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "mass" }, message: "must have required property 'mass'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.screw === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "screw" }, message: "must have required property 'screw'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func1.call(schema55.properties, key0)) {
        const err5 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err5];
        } else {
          vErrors.push(err5);
        }
        errors++;
      }
    }
    if (data.kind !== void 0) {
      if ("side-tie" !== data.kind) {
        const err6 = { instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/const", keyword: "const", params: { allowedValue: "side-tie" }, message: "must be equal to constant" };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
    }
    if (data.name !== void 0) {
      if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.about !== void 0) {
      if (!validate70(data.about, { instancePath: instancePath + "/about", parentData: data, parentDataProperty: "about", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate70.errors : vErrors.concat(validate70.errors);
        errors = vErrors.length;
      }
    }
    if (data.slotSize !== void 0) {
      if (!validate74(data.slotSize, { instancePath: instancePath + "/slotSize", parentData: data, parentDataProperty: "slotSize", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
        errors = vErrors.length;
      }
    }
    if (data.mass !== void 0) {
      if (!validate150(data.mass, { instancePath: instancePath + "/mass", parentData: data, parentDataProperty: "mass", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate150.errors : vErrors.concat(validate150.errors);
        errors = vErrors.length;
      }
    }
    if (data.tested !== void 0) {
      if (!validate152(data.tested, { instancePath: instancePath + "/tested", parentData: data, parentDataProperty: "tested", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate152.errors : vErrors.concat(validate152.errors);
        errors = vErrors.length;
      }
    }
    if (data.screw !== void 0) {
      if (!validate78(data.screw, { instancePath: instancePath + "/screw", parentData: data, parentDataProperty: "screw", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate78.errors : vErrors.concat(validate78.errors);
        errors = vErrors.length;
      }
    }
    if (data.accessHole !== void 0) {
      if (!validate72(data.accessHole, { instancePath: instancePath + "/accessHole", parentData: data, parentDataProperty: "accessHole", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.lugs !== void 0) {
      if (typeof data.lugs !== "boolean") {
        const err7 = { instancePath: instancePath + "/lugs", schemaPath: "#/properties/lugs/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" };
        if (vErrors === null) {
          vErrors = [err7];
        } else {
          vErrors.push(err7);
        }
        errors++;
      }
    }
  } else {
    const err8 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err8];
    } else {
      vErrors.push(err8);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.kind === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "kind" }, message: "must have required property 'kind'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.name === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.slotSize === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "slotSize" }, message: "must have required property 'slotSize'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.mass === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "mass" }, message: "must have required property 'mass'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.screw === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "screw" }, message: "must have required property 'screw'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.gap === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "gap" }, message: "must have required property 'gap'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.thickness === void 0) {
      const err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "thickness" }, message: "must have required property 'thickness'" };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    if (data.holes === void 0) {
      const err7 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "holes" }, message: "must have required property 'holes'" };
      if (vErrors === null) {
        vErrors = [err7];
      } else {
        vErrors.push(err7);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func1.call(schema56.properties, key0)) {
        const err8 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err8];
        } else {
          vErrors.push(err8);
        }
        errors++;
      }
    }
    if (data.kind !== void 0) {
      let data0 = data.kind;
      if (!(data0 === "pivot" || data0 === "hinge")) {
        const err9 = { instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/enum", keyword: "enum", params: { allowedValues: schema56.properties.kind.enum }, message: "must be equal to one of the allowed values" };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
    }
    if (data.name !== void 0) {
      if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.about !== void 0) {
      if (!validate70(data.about, { instancePath: instancePath + "/about", parentData: data, parentDataProperty: "about", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate70.errors : vErrors.concat(validate70.errors);
        errors = vErrors.length;
      }
    }
    if (data.slotSize !== void 0) {
      if (!validate74(data.slotSize, { instancePath: instancePath + "/slotSize", parentData: data, parentDataProperty: "slotSize", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
        errors = vErrors.length;
      }
    }
    if (data.mass !== void 0) {
      if (!validate150(data.mass, { instancePath: instancePath + "/mass", parentData: data, parentDataProperty: "mass", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate150.errors : vErrors.concat(validate150.errors);
        errors = vErrors.length;
      }
    }
    if (data.tested !== void 0) {
      if (!validate152(data.tested, { instancePath: instancePath + "/tested", parentData: data, parentDataProperty: "tested", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate152.errors : vErrors.concat(validate152.errors);
        errors = vErrors.length;
      }
    }
    if (data.screw !== void 0) {
      if (!validate78(data.screw, { instancePath: instancePath + "/screw", parentData: data, parentDataProperty: "screw", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate78.errors : vErrors.concat(validate78.errors);
        errors = vErrors.length;
      }
    }
    if (data.gap !== void 0) {
      if (!validate72(data.gap, { instancePath: instancePath + "/gap", parentData: data, parentDataProperty: "gap", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.thickness !== void 0) {
      if (!validate72(data.thickness, { instancePath: instancePath + "/thickness", parentData: data, parentDataProperty: "thickness", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.holes !== void 0) {
      let data9 = data.holes;
      if (Array.isArray(data9)) {
        if (data9.length < 1) {
          const err10 = { instancePath: instancePath + "/holes", schemaPath: "#/properties/holes/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
          if (vErrors === null) {
            vErrors = [err10];
          } else {
            vErrors.push(err10);
          }
          errors++;
        }
        const len0 = data9.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (!validate162(data9[i0], { instancePath: instancePath + "/holes/" + i0, parentData: data9, parentDataProperty: i0, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate162.errors : vErrors.concat(validate162.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err11 = { instancePath: instancePath + "/holes", schemaPath: "#/properties/holes/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err11];
        } else {
          vErrors.push(err11);
        }
        errors++;
      }
    }
  } else {
    const err12 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err12];
    } else {
      vErrors.push(err12);
    }
    errors++;
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
        const err0 = { instancePath, schemaPath: "#/discriminator", keyword: "discriminator", params: { error: "mapping", tag: "kind", tagValue: tag0 }, message: 'value of tag "kind" must be in oneOf' };
        if (vErrors === null) {
          vErrors = [err0];
        } else {
          vErrors.push(err0);
        }
        errors++;
      }
    } else {
      const err1 = { instancePath, schemaPath: "#/discriminator", keyword: "discriminator", params: { error: "tag", tag: "kind", tagValue: tag0 }, message: 'tag "kind" must be string' };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.name === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.thread === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "thread" }, message: "must have required property 'thread'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.diameter === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "diameter" }, message: "must have required property 'diameter'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.pitch === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "pitch" }, message: "must have required property 'pitch'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.head === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "head" }, message: "must have required property 'head'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.headDiameter === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "headDiameter" }, message: "must have required property 'headDiameter'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.headHeight === void 0) {
      const err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "headHeight" }, message: "must have required property 'headHeight'" };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    if (data.key === void 0) {
      const err7 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "key" }, message: "must have required property 'key'" };
      if (vErrors === null) {
        vErrors = [err7];
      } else {
        vErrors.push(err7);
      }
      errors++;
    }
    if (data.socketDepth === void 0) {
      const err8 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "socketDepth" }, message: "must have required property 'socketDepth'" };
      if (vErrors === null) {
        vErrors = [err8];
      } else {
        vErrors.push(err8);
      }
      errors++;
    }
    if (data.propertyClass === void 0) {
      const err9 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "propertyClass" }, message: "must have required property 'propertyClass'" };
      if (vErrors === null) {
        vErrors = [err9];
      } else {
        vErrors.push(err9);
      }
      errors++;
    }
    if (data.torque === void 0) {
      const err10 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "torque" }, message: "must have required property 'torque'" };
      if (vErrors === null) {
        vErrors = [err10];
      } else {
        vErrors.push(err10);
      }
      errors++;
    }
    if (data.lengths === void 0) {
      const err11 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "lengths" }, message: "must have required property 'lengths'" };
      if (vErrors === null) {
        vErrors = [err11];
      } else {
        vErrors.push(err11);
      }
      errors++;
    }
    if (data.source === void 0) {
      const err12 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "source" }, message: "must have required property 'source'" };
      if (vErrors === null) {
        vErrors = [err12];
      } else {
        vErrors.push(err12);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func1.call(schema57.properties, key0)) {
        const err13 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err13];
        } else {
          vErrors.push(err13);
        }
        errors++;
      }
    }
    if (data.name !== void 0) {
      let data0 = data.name;
      if (!validate54(data0, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
      if (typeof data0 === "string") {
        if (!pattern4.test(data0)) {
          const err14 = { instancePath: instancePath + "/name", schemaPath: "#/properties/name/pattern", keyword: "pattern", params: { pattern: "\\{length\\}" }, message: 'must match pattern "\\{length\\}"' };
          if (vErrors === null) {
            vErrors = [err14];
          } else {
            vErrors.push(err14);
          }
          errors++;
        }
      }
    }
    if (data.thread !== void 0) {
      if (!validate89(data.thread, { instancePath: instancePath + "/thread", parentData: data, parentDataProperty: "thread", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate89.errors : vErrors.concat(validate89.errors);
        errors = vErrors.length;
      }
    }
    if (data.diameter !== void 0) {
      if (!validate72(data.diameter, { instancePath: instancePath + "/diameter", parentData: data, parentDataProperty: "diameter", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.pitch !== void 0) {
      if (!validate72(data.pitch, { instancePath: instancePath + "/pitch", parentData: data, parentDataProperty: "pitch", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.head !== void 0) {
      let data4 = data.head;
      if (!(data4 === "cap" || data4 === "button" || data4 === "countersunk" || data4 === "hex" || data4 === "none")) {
        const err15 = { instancePath: instancePath + "/head", schemaPath: "#/properties/head/enum", keyword: "enum", params: { allowedValues: schema57.properties.head.enum }, message: "must be equal to one of the allowed values" };
        if (vErrors === null) {
          vErrors = [err15];
        } else {
          vErrors.push(err15);
        }
        errors++;
      }
    }
    if (data.headDiameter !== void 0) {
      if (!validate72(data.headDiameter, { instancePath: instancePath + "/headDiameter", parentData: data, parentDataProperty: "headDiameter", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.headHeight !== void 0) {
      if (!validate72(data.headHeight, { instancePath: instancePath + "/headHeight", parentData: data, parentDataProperty: "headHeight", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.key !== void 0) {
      if (!validate72(data.key, { instancePath: instancePath + "/key", parentData: data, parentDataProperty: "key", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.socketDepth !== void 0) {
      if (!validate72(data.socketDepth, { instancePath: instancePath + "/socketDepth", parentData: data, parentDataProperty: "socketDepth", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.propertyClass !== void 0) {
      let data9 = data.propertyClass;
      if (typeof data9 === "string") {
        if (func2(data9) > 40) {
          const err16 = { instancePath: instancePath + "/propertyClass", schemaPath: "#/properties/propertyClass/maxLength", keyword: "maxLength", params: { limit: 40 }, message: "must NOT have more than 40 characters" };
          if (vErrors === null) {
            vErrors = [err16];
          } else {
            vErrors.push(err16);
          }
          errors++;
        }
        if (func2(data9) < 1) {
          const err17 = { instancePath: instancePath + "/propertyClass", schemaPath: "#/properties/propertyClass/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
          if (vErrors === null) {
            vErrors = [err17];
          } else {
            vErrors.push(err17);
          }
          errors++;
        }
      } else {
        const err18 = { instancePath: instancePath + "/propertyClass", schemaPath: "#/properties/propertyClass/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err18];
        } else {
          vErrors.push(err18);
        }
        errors++;
      }
    }
    if (data.torque !== void 0) {
      if (!validate103(data.torque, { instancePath: instancePath + "/torque", parentData: data, parentDataProperty: "torque", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
        errors = vErrors.length;
      }
    }
    if (data.lengths !== void 0) {
      let data11 = data.lengths;
      if (Array.isArray(data11)) {
        if (data11.length < 1) {
          const err19 = { instancePath: instancePath + "/lengths", schemaPath: "#/properties/lengths/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
          if (vErrors === null) {
            vErrors = [err19];
          } else {
            vErrors.push(err19);
          }
          errors++;
        }
        const len0 = data11.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (!validate72(data11[i0], { instancePath: instancePath + "/lengths/" + i0, parentData: data11, parentDataProperty: i0, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err20 = { instancePath: instancePath + "/lengths", schemaPath: "#/properties/lengths/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err20];
        } else {
          vErrors.push(err20);
        }
        errors++;
      }
    }
    if (data.source !== void 0) {
      if (!validate65(data.source, { instancePath: instancePath + "/source", parentData: data, parentDataProperty: "source", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err21 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err21];
    } else {
      vErrors.push(err21);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.name === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.kind === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "kind" }, message: "must have required property 'kind'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.slotSize === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "slotSize" }, message: "must have required property 'slotSize'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.thread === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "thread" }, message: "must have required property 'thread'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.length === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "length" }, message: "must have required property 'length'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.width === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "width" }, message: "must have required property 'width'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.thickness === void 0) {
      const err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "thickness" }, message: "must have required property 'thickness'" };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    if (data.engagement === void 0) {
      const err7 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "engagement" }, message: "must have required property 'engagement'" };
      if (vErrors === null) {
        vErrors = [err7];
      } else {
        vErrors.push(err7);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === "name" || key0 === "kind" || key0 === "slotSize" || key0 === "thread" || key0 === "length" || key0 === "width" || key0 === "thickness" || key0 === "engagement")) {
        const err8 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err8];
        } else {
          vErrors.push(err8);
        }
        errors++;
      }
    }
    if (data.name !== void 0) {
      if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.kind !== void 0) {
      let data1 = data.kind;
      if (!(data1 === "end-load" || data1 === "drop-in")) {
        const err9 = { instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/enum", keyword: "enum", params: { allowedValues: schema58.properties.kind.enum }, message: "must be equal to one of the allowed values" };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
    }
    if (data.slotSize !== void 0) {
      if (!validate74(data.slotSize, { instancePath: instancePath + "/slotSize", parentData: data, parentDataProperty: "slotSize", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
        errors = vErrors.length;
      }
    }
    if (data.thread !== void 0) {
      if (!validate89(data.thread, { instancePath: instancePath + "/thread", parentData: data, parentDataProperty: "thread", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate89.errors : vErrors.concat(validate89.errors);
        errors = vErrors.length;
      }
    }
    if (data.length !== void 0) {
      if (!validate72(data.length, { instancePath: instancePath + "/length", parentData: data, parentDataProperty: "length", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.width !== void 0) {
      if (!validate72(data.width, { instancePath: instancePath + "/width", parentData: data, parentDataProperty: "width", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.thickness !== void 0) {
      if (!validate72(data.thickness, { instancePath: instancePath + "/thickness", parentData: data, parentDataProperty: "thickness", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.engagement !== void 0) {
      if (!validate72(data.engagement, { instancePath: instancePath + "/engagement", parentData: data, parentDataProperty: "engagement", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err10 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err10];
    } else {
      vErrors.push(err10);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.name === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.profiles === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "profiles" }, message: "must have required property 'profiles'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.thickness === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "thickness" }, message: "must have required property 'thickness'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.mass === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "mass" }, message: "must have required property 'mass'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === "name" || key0 === "profiles" || key0 === "thickness" || key0 === "mass")) {
        const err4 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.name !== void 0) {
      if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.profiles !== void 0) {
      let data1 = data.profiles;
      if (Array.isArray(data1)) {
        if (data1.length < 1) {
          const err5 = { instancePath: instancePath + "/profiles", schemaPath: "#/properties/profiles/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
          if (vErrors === null) {
            vErrors = [err5];
          } else {
            vErrors.push(err5);
          }
          errors++;
        }
        const len0 = data1.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (!validate78(data1[i0], { instancePath: instancePath + "/profiles/" + i0, parentData: data1, parentDataProperty: i0, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate78.errors : vErrors.concat(validate78.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err6 = { instancePath: instancePath + "/profiles", schemaPath: "#/properties/profiles/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
    }
    if (data.thickness !== void 0) {
      if (!validate72(data.thickness, { instancePath: instancePath + "/thickness", parentData: data, parentDataProperty: "thickness", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.mass !== void 0) {
      if (!validate150(data.mass, { instancePath: instancePath + "/mass", parentData: data, parentDataProperty: "mass", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate150.errors : vErrors.concat(validate150.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err7 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err7];
    } else {
      vErrors.push(err7);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.by === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "by" }, message: "must have required property 'by'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.thread === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "thread" }, message: "must have required property 'thread'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.engagement === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "engagement" }, message: "must have required property 'engagement'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === "by" || key0 === "thread" || key0 === "engagement")) {
        const err3 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.by !== void 0) {
      if ("stem" !== data.by) {
        const err4 = { instancePath: instancePath + "/by", schemaPath: "#/properties/by/const", keyword: "const", params: { allowedValue: "stem" }, message: "must be equal to constant" };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.thread !== void 0) {
      if (!validate89(data.thread, { instancePath: instancePath + "/thread", parentData: data, parentDataProperty: "thread", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate89.errors : vErrors.concat(validate89.errors);
        errors = vErrors.length;
      }
    }
    if (data.engagement !== void 0) {
      if (!validate72(data.engagement, { instancePath: instancePath + "/engagement", parentData: data, parentDataProperty: "engagement", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err5 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err5];
    } else {
      vErrors.push(err5);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.by === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "by" }, message: "must have required property 'by'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.size === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "size" }, message: "must have required property 'size'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.thickness === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "thickness" }, message: "must have required property 'thickness'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === "by" || key0 === "size" || key0 === "thickness" || key0 === "holes")) {
        const err3 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.by !== void 0) {
      if ("plate" !== data.by) {
        const err4 = { instancePath: instancePath + "/by", schemaPath: "#/properties/by/const", keyword: "const", params: { allowedValue: "plate" }, message: "must be equal to constant" };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.size !== void 0) {
      if (!validate99(data.size, { instancePath: instancePath + "/size", parentData: data, parentDataProperty: "size", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate99.errors : vErrors.concat(validate99.errors);
        errors = vErrors.length;
      }
    }
    if (data.thickness !== void 0) {
      if (!validate72(data.thickness, { instancePath: instancePath + "/thickness", parentData: data, parentDataProperty: "thickness", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.holes !== void 0) {
      let data3 = data.holes;
      if (Array.isArray(data3)) {
        if (data3.length < 1) {
          const err5 = { instancePath: instancePath + "/holes", schemaPath: "#/properties/holes/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
          if (vErrors === null) {
            vErrors = [err5];
          } else {
            vErrors.push(err5);
          }
          errors++;
        }
        const len0 = data3.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (!validate162(data3[i0], { instancePath: instancePath + "/holes/" + i0, parentData: data3, parentDataProperty: i0, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate162.errors : vErrors.concat(validate162.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err6 = { instancePath: instancePath + "/holes", schemaPath: "#/properties/holes/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
    }
  } else {
    const err7 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err7];
    } else {
      vErrors.push(err7);
    }
    errors++;
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
        const err0 = { instancePath, schemaPath: "#/discriminator", keyword: "discriminator", params: { error: "mapping", tag: "by", tagValue: tag0 }, message: 'value of tag "by" must be in oneOf' };
        if (vErrors === null) {
          vErrors = [err0];
        } else {
          vErrors.push(err0);
        }
        errors++;
      }
    } else {
      const err1 = { instancePath, schemaPath: "#/discriminator", keyword: "discriminator", params: { error: "tag", tag: "by", tagValue: tag0 }, message: 'tag "by" must be string' };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.name === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.kind === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "kind" }, message: "must have required property 'kind'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.mount === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "mount" }, message: "must have required property 'mount'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.diameter === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "diameter" }, message: "must have required property 'diameter'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.collar === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "collar" }, message: "must have required property 'collar'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.raise === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "raise" }, message: "must have required property 'raise'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.capacity === void 0) {
      const err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "capacity" }, message: "must have required property 'capacity'" };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    if (data.mass === void 0) {
      const err7 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "mass" }, message: "must have required property 'mass'" };
      if (vErrors === null) {
        vErrors = [err7];
      } else {
        vErrors.push(err7);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func1.call(schema60.properties, key0)) {
        const err8 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err8];
        } else {
          vErrors.push(err8);
        }
        errors++;
      }
    }
    if (data.name !== void 0) {
      if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.kind !== void 0) {
      let data1 = data.kind;
      if (!(data1 === "foot" || data1 === "caster")) {
        const err9 = { instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/enum", keyword: "enum", params: { allowedValues: schema60.properties.kind.enum }, message: "must be equal to one of the allowed values" };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
    }
    if (data.mount !== void 0) {
      if (!validate257(data.mount, { instancePath: instancePath + "/mount", parentData: data, parentDataProperty: "mount", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate257.errors : vErrors.concat(validate257.errors);
        errors = vErrors.length;
      }
    }
    if (data.diameter !== void 0) {
      if (!validate72(data.diameter, { instancePath: instancePath + "/diameter", parentData: data, parentDataProperty: "diameter", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.collar !== void 0) {
      if (!validate72(data.collar, { instancePath: instancePath + "/collar", parentData: data, parentDataProperty: "collar", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.raise !== void 0) {
      if (!validate99(data.raise, { instancePath: instancePath + "/raise", parentData: data, parentDataProperty: "raise", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate99.errors : vErrors.concat(validate99.errors);
        errors = vErrors.length;
      }
    }
    if (data.capacity !== void 0) {
      if (!validate96(data.capacity, { instancePath: instancePath + "/capacity", parentData: data, parentDataProperty: "capacity", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate96.errors : vErrors.concat(validate96.errors);
        errors = vErrors.length;
      }
    }
    if (data.brake !== void 0) {
      if (typeof data.brake !== "boolean") {
        const err10 = { instancePath: instancePath + "/brake", schemaPath: "#/properties/brake/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" };
        if (vErrors === null) {
          vErrors = [err10];
        } else {
          vErrors.push(err10);
        }
        errors++;
      }
    }
    if (data.swivel !== void 0) {
      if (typeof data.swivel !== "boolean") {
        const err11 = { instancePath: instancePath + "/swivel", schemaPath: "#/properties/swivel/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" };
        if (vErrors === null) {
          vErrors = [err11];
        } else {
          vErrors.push(err11);
        }
        errors++;
      }
    }
    if (data.mass !== void 0) {
      if (!validate150(data.mass, { instancePath: instancePath + "/mass", parentData: data, parentDataProperty: "mass", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate150.errors : vErrors.concat(validate150.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err12 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err12];
    } else {
      vErrors.push(err12);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.name === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.thicknesses === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "thicknesses" }, message: "must have required property 'thicknesses'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.elasticModulus === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "elasticModulus" }, message: "must have required property 'elasticModulus'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.poisson === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "poisson" }, message: "must have required property 'poisson'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.density === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "density" }, message: "must have required property 'density'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.expansion === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "expansion" }, message: "must have required property 'expansion'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.strength === void 0) {
      const err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "strength" }, message: "must have required property 'strength'" };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    if (data.brittle === void 0) {
      const err7 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "brittle" }, message: "must have required property 'brittle'" };
      if (vErrors === null) {
        vErrors = [err7];
      } else {
        vErrors.push(err7);
      }
      errors++;
    }
    if (data.source === void 0) {
      const err8 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "source" }, message: "must have required property 'source'" };
      if (vErrors === null) {
        vErrors = [err8];
      } else {
        vErrors.push(err8);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func1.call(schema64.properties, key0)) {
        const err9 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
    }
    if (data.name !== void 0) {
      let data0 = data.name;
      if (!validate54(data0, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
      if (typeof data0 === "string") {
        if (!pattern5.test(data0)) {
          const err10 = { instancePath: instancePath + "/name", schemaPath: "#/properties/name/pattern", keyword: "pattern", params: { pattern: "\\{thickness\\}" }, message: 'must match pattern "\\{thickness\\}"' };
          if (vErrors === null) {
            vErrors = [err10];
          } else {
            vErrors.push(err10);
          }
          errors++;
        }
      }
    }
    if (data.thicknesses !== void 0) {
      let data1 = data.thicknesses;
      if (Array.isArray(data1)) {
        if (data1.length < 1) {
          const err11 = { instancePath: instancePath + "/thicknesses", schemaPath: "#/properties/thicknesses/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
          if (vErrors === null) {
            vErrors = [err11];
          } else {
            vErrors.push(err11);
          }
          errors++;
        }
        const len0 = data1.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (!validate72(data1[i0], { instancePath: instancePath + "/thicknesses/" + i0, parentData: data1, parentDataProperty: i0, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err12 = { instancePath: instancePath + "/thicknesses", schemaPath: "#/properties/thicknesses/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err12];
        } else {
          vErrors.push(err12);
        }
        errors++;
      }
    }
    if (data.elasticModulus !== void 0) {
      if (!validate56(data.elasticModulus, { instancePath: instancePath + "/elasticModulus", parentData: data, parentDataProperty: "elasticModulus", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate56.errors : vErrors.concat(validate56.errors);
        errors = vErrors.length;
      }
    }
    if (data.poisson !== void 0) {
      let data4 = data.poisson;
      if (typeof data4 == "number" && isFinite(data4)) {
        if (data4 < 0 || isNaN(data4)) {
          const err13 = { instancePath: instancePath + "/poisson", schemaPath: "#/properties/poisson/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
          if (vErrors === null) {
            vErrors = [err13];
          } else {
            vErrors.push(err13);
          }
          errors++;
        }
        if (data4 >= 0.5 || isNaN(data4)) {
          const err14 = { instancePath: instancePath + "/poisson", schemaPath: "#/properties/poisson/exclusiveMaximum", keyword: "exclusiveMaximum", params: { comparison: "<", limit: 0.5 }, message: "must be < 0.5" };
          if (vErrors === null) {
            vErrors = [err14];
          } else {
            vErrors.push(err14);
          }
          errors++;
        }
      } else {
        const err15 = { instancePath: instancePath + "/poisson", schemaPath: "#/properties/poisson/type", keyword: "type", params: { type: "number" }, message: "must be number" };
        if (vErrors === null) {
          vErrors = [err15];
        } else {
          vErrors.push(err15);
        }
        errors++;
      }
    }
    if (data.shearModulus !== void 0) {
      if (!validate56(data.shearModulus, { instancePath: instancePath + "/shearModulus", parentData: data, parentDataProperty: "shearModulus", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate56.errors : vErrors.concat(validate56.errors);
        errors = vErrors.length;
      }
    }
    if (data.density !== void 0) {
      if (!validate59(data.density, { instancePath: instancePath + "/density", parentData: data, parentDataProperty: "density", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate59.errors : vErrors.concat(validate59.errors);
        errors = vErrors.length;
      }
    }
    if (data.expansion !== void 0) {
      if (!validate61(data.expansion, { instancePath: instancePath + "/expansion", parentData: data, parentDataProperty: "expansion", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate61.errors : vErrors.concat(validate61.errors);
        errors = vErrors.length;
      }
    }
    if (data.strength !== void 0) {
      if (!validate56(data.strength, { instancePath: instancePath + "/strength", parentData: data, parentDataProperty: "strength", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate56.errors : vErrors.concat(validate56.errors);
        errors = vErrors.length;
      }
    }
    if (data.moisture !== void 0) {
      let data9 = data.moisture;
      if (typeof data9 == "number" && isFinite(data9)) {
        if (data9 > 0.05 || isNaN(data9)) {
          const err16 = { instancePath: instancePath + "/moisture", schemaPath: "#/properties/moisture/maximum", keyword: "maximum", params: { comparison: "<=", limit: 0.05 }, message: "must be <= 0.05" };
          if (vErrors === null) {
            vErrors = [err16];
          } else {
            vErrors.push(err16);
          }
          errors++;
        }
        if (data9 < 0 || isNaN(data9)) {
          const err17 = { instancePath: instancePath + "/moisture", schemaPath: "#/properties/moisture/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
          if (vErrors === null) {
            vErrors = [err17];
          } else {
            vErrors.push(err17);
          }
          errors++;
        }
      } else {
        const err18 = { instancePath: instancePath + "/moisture", schemaPath: "#/properties/moisture/type", keyword: "type", params: { type: "number" }, message: "must be number" };
        if (vErrors === null) {
          vErrors = [err18];
        } else {
          vErrors.push(err18);
        }
        errors++;
      }
    }
    if (data.brittle !== void 0) {
      if (typeof data.brittle !== "boolean") {
        const err19 = { instancePath: instancePath + "/brittle", schemaPath: "#/properties/brittle/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" };
        if (vErrors === null) {
          vErrors = [err19];
        } else {
          vErrors.push(err19);
        }
        errors++;
      }
    }
    if (data.source !== void 0) {
      if (!validate65(data.source, { instancePath: instancePath + "/source", parentData: data, parentDataProperty: "source", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err20 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err20];
    } else {
      vErrors.push(err20);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.name === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.slotSize === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "slotSize" }, message: "must have required property 'slotSize'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.sheet === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "sheet" }, message: "must have required property 'sheet'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.depth === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "depth" }, message: "must have required property 'depth'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === "name" || key0 === "slotSize" || key0 === "sheet" || key0 === "depth")) {
        const err4 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.name !== void 0) {
      if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.slotSize !== void 0) {
      if (!validate74(data.slotSize, { instancePath: instancePath + "/slotSize", parentData: data, parentDataProperty: "slotSize", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
        errors = vErrors.length;
      }
    }
    if (data.sheet !== void 0) {
      if (!validate99(data.sheet, { instancePath: instancePath + "/sheet", parentData: data, parentDataProperty: "sheet", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate99.errors : vErrors.concat(validate99.errors);
        errors = vErrors.length;
      }
    }
    if (data.depth !== void 0) {
      if (!validate72(data.depth, { instancePath: instancePath + "/depth", parentData: data, parentDataProperty: "depth", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err5 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err5];
    } else {
      vErrors.push(err5);
    }
    errors++;
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
    const err0 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: schema67.type }, message: "must be number,string" };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  if (typeof data === "string") {
    if (func2(data) > 64) {
      const err1 = { instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.size === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "size" }, message: "must have required property 'size'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.key === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "key" }, message: "must have required property 'key'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.longArm === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "longArm" }, message: "must have required property 'longArm'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.shortArm === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "shortArm" }, message: "must have required property 'shortArm'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.torque === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "torque" }, message: "must have required property 'torque'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === "size" || key0 === "key" || key0 === "longArm" || key0 === "shortArm" || key0 === "torque")) {
        const err5 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err5];
        } else {
          vErrors.push(err5);
        }
        errors++;
      }
    }
    if (data.size !== void 0) {
      let data0 = data.size;
      if (typeof data0 === "string") {
        if (func2(data0) > 20) {
          const err6 = { instancePath: instancePath + "/size", schemaPath: "#/properties/size/maxLength", keyword: "maxLength", params: { limit: 20 }, message: "must NOT have more than 20 characters" };
          if (vErrors === null) {
            vErrors = [err6];
          } else {
            vErrors.push(err6);
          }
          errors++;
        }
        if (func2(data0) < 1) {
          const err7 = { instancePath: instancePath + "/size", schemaPath: "#/properties/size/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
          if (vErrors === null) {
            vErrors = [err7];
          } else {
            vErrors.push(err7);
          }
          errors++;
        }
      } else {
        const err8 = { instancePath: instancePath + "/size", schemaPath: "#/properties/size/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err8];
        } else {
          vErrors.push(err8);
        }
        errors++;
      }
    }
    if (data.key !== void 0) {
      if (!validate72(data.key, { instancePath: instancePath + "/key", parentData: data, parentDataProperty: "key", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.longArm !== void 0) {
      if (!validate72(data.longArm, { instancePath: instancePath + "/longArm", parentData: data, parentDataProperty: "longArm", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.shortArm !== void 0) {
      if (!validate72(data.shortArm, { instancePath: instancePath + "/shortArm", parentData: data, parentDataProperty: "shortArm", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.torque !== void 0) {
      if (!validate103(data.torque, { instancePath: instancePath + "/torque", parentData: data, parentDataProperty: "torque", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err9 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err9];
    } else {
      vErrors.push(err9);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.name === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.kind === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "kind" }, message: "must have required property 'kind'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.swing === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "swing" }, message: "must have required property 'swing'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.tilt === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "tilt" }, message: "must have required property 'tilt'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.sizes === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "sizes" }, message: "must have required property 'sizes'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.source === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "source" }, message: "must have required property 'source'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === "name" || key0 === "kind" || key0 === "swing" || key0 === "tilt" || key0 === "sizes" || key0 === "source")) {
        const err6 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
    }
    if (data.name !== void 0) {
      let data0 = data.name;
      if (!validate54(data0, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
      if (typeof data0 === "string") {
        if (!pattern6.test(data0)) {
          const err7 = { instancePath: instancePath + "/name", schemaPath: "#/properties/name/pattern", keyword: "pattern", params: { pattern: "\\{size\\}" }, message: 'must match pattern "\\{size\\}"' };
          if (vErrors === null) {
            vErrors = [err7];
          } else {
            vErrors.push(err7);
          }
          errors++;
        }
      }
    }
    if (data.kind !== void 0) {
      let data1 = data.kind;
      if (!(data1 === "hex-key" || data1 === "ball-end-key" || data1 === "t-handle" || data1 === "bit-ratchet" || data1 === "wrench")) {
        const err8 = { instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/enum", keyword: "enum", params: { allowedValues: schema66.properties.kind.enum }, message: "must be equal to one of the allowed values" };
        if (vErrors === null) {
          vErrors = [err8];
        } else {
          vErrors.push(err8);
        }
        errors++;
      }
    }
    if (data.swing !== void 0) {
      if (!validate292(data.swing, { instancePath: instancePath + "/swing", parentData: data, parentDataProperty: "swing", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate292.errors : vErrors.concat(validate292.errors);
        errors = vErrors.length;
      }
    }
    if (data.tilt !== void 0) {
      if (!validate292(data.tilt, { instancePath: instancePath + "/tilt", parentData: data, parentDataProperty: "tilt", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate292.errors : vErrors.concat(validate292.errors);
        errors = vErrors.length;
      }
    }
    if (data.sizes !== void 0) {
      let data4 = data.sizes;
      if (Array.isArray(data4)) {
        if (data4.length < 1) {
          const err9 = { instancePath: instancePath + "/sizes", schemaPath: "#/properties/sizes/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
          if (vErrors === null) {
            vErrors = [err9];
          } else {
            vErrors.push(err9);
          }
          errors++;
        }
        const len0 = data4.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (!validate295(data4[i0], { instancePath: instancePath + "/sizes/" + i0, parentData: data4, parentDataProperty: i0, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate295.errors : vErrors.concat(validate295.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err10 = { instancePath: instancePath + "/sizes", schemaPath: "#/properties/sizes/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err10];
        } else {
          vErrors.push(err10);
        }
        errors++;
      }
    }
    if (data.source !== void 0) {
      if (!validate65(data.source, { instancePath: instancePath + "/source", parentData: data, parentDataProperty: "source", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err11 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err11];
    } else {
      vErrors.push(err11);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.format === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "format" }, message: "must have required property 'format'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.units === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "units" }, message: "must have required property 'units'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.title === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "title" }, message: "must have required property 'title'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func1.call(schema19.properties, key0)) {
        const err3 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.$schema !== void 0) {
      if (typeof data.$schema !== "string") {
        const err4 = { instancePath: instancePath + "/$schema", schemaPath: "#/properties/%24schema/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.format !== void 0) {
      if (1 !== data.format) {
        const err5 = { instancePath: instancePath + "/format", schemaPath: "#/properties/format/const", keyword: "const", params: { allowedValue: 1 }, message: "must be equal to constant" };
        if (vErrors === null) {
          vErrors = [err5];
        } else {
          vErrors.push(err5);
        }
        errors++;
      }
    }
    if (data.units !== void 0) {
      let data2 = data.units;
      if (!(data2 === "mm-N-kg" || data2 === "in-lbf-lb")) {
        const err6 = { instancePath: instancePath + "/units", schemaPath: "#/properties/units/enum", keyword: "enum", params: { allowedValues: schema19.properties.units.enum }, message: "must be equal to one of the allowed values" };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
    }
    if (data.title !== void 0) {
      let data3 = data.title;
      if (typeof data3 === "string") {
        if (func2(data3) > 200) {
          const err7 = { instancePath: instancePath + "/title", schemaPath: "#/properties/title/maxLength", keyword: "maxLength", params: { limit: 200 }, message: "must NOT have more than 200 characters" };
          if (vErrors === null) {
            vErrors = [err7];
          } else {
            vErrors.push(err7);
          }
          errors++;
        }
        if (func2(data3) < 1) {
          const err8 = { instancePath: instancePath + "/title", schemaPath: "#/properties/title/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
          if (vErrors === null) {
            vErrors = [err8];
          } else {
            vErrors.push(err8);
          }
          errors++;
        }
      } else {
        const err9 = { instancePath: instancePath + "/title", schemaPath: "#/properties/title/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
    }
    if (data.notes !== void 0) {
      let data4 = data.notes;
      const _errs9 = errors;
      let valid1 = false;
      const _errs10 = errors;
      if (typeof data4 !== "string") {
        const err10 = { instancePath: instancePath + "/notes", schemaPath: "#/properties/notes/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err10];
        } else {
          vErrors.push(err10);
        }
        errors++;
      }
      var _valid0 = _errs10 === errors;
      valid1 = valid1 || _valid0;
      const _errs12 = errors;
      if (Array.isArray(data4)) {
        const len0 = data4.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (typeof data4[i0] !== "string") {
            const err11 = { instancePath: instancePath + "/notes/" + i0, schemaPath: "#/properties/notes/anyOf/1/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
            if (vErrors === null) {
              vErrors = [err11];
            } else {
              vErrors.push(err11);
            }
            errors++;
          }
        }
      } else {
        const err12 = { instancePath: instancePath + "/notes", schemaPath: "#/properties/notes/anyOf/1/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err12];
        } else {
          vErrors.push(err12);
        }
        errors++;
      }
      var _valid0 = _errs12 === errors;
      valid1 = valid1 || _valid0;
      if (!valid1) {
        const err13 = { instancePath: instancePath + "/notes", schemaPath: "#/properties/notes/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
        if (vErrors === null) {
          vErrors = [err13];
        } else {
          vErrors.push(err13);
        }
        errors++;
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
    }
    if (data.materials !== void 0) {
      let data6 = data.materials;
      if (Array.isArray(data6)) {
        const len1 = data6.length;
        for (let i1 = 0; i1 < len1; i1++) {
          if (!validate53(data6[i1], { instancePath: instancePath + "/materials/" + i1, parentData: data6, parentDataProperty: i1, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate53.errors : vErrors.concat(validate53.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err14 = { instancePath: instancePath + "/materials", schemaPath: "#/properties/materials/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err14];
        } else {
          vErrors.push(err14);
        }
        errors++;
      }
    }
    if (data.series !== void 0) {
      let data8 = data.series;
      if (Array.isArray(data8)) {
        const len2 = data8.length;
        for (let i2 = 0; i2 < len2; i2++) {
          if (!validate68(data8[i2], { instancePath: instancePath + "/series/" + i2, parentData: data8, parentDataProperty: i2, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate68.errors : vErrors.concat(validate68.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err15 = { instancePath: instancePath + "/series", schemaPath: "#/properties/series/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err15];
        } else {
          vErrors.push(err15);
        }
        errors++;
      }
    }
    if (data.profiles !== void 0) {
      let data10 = data.profiles;
      if (Array.isArray(data10)) {
        const len3 = data10.length;
        for (let i3 = 0; i3 < len3; i3++) {
          if (!validate107(data10[i3], { instancePath: instancePath + "/profiles/" + i3, parentData: data10, parentDataProperty: i3, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate107.errors : vErrors.concat(validate107.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err16 = { instancePath: instancePath + "/profiles", schemaPath: "#/properties/profiles/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err16];
        } else {
          vErrors.push(err16);
        }
        errors++;
      }
    }
    if (data.connectors !== void 0) {
      let data12 = data.connectors;
      if (Array.isArray(data12)) {
        const len4 = data12.length;
        for (let i4 = 0; i4 < len4; i4++) {
          if (!validate145(data12[i4], { instancePath: instancePath + "/connectors/" + i4, parentData: data12, parentDataProperty: i4, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate145.errors : vErrors.concat(validate145.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err17 = { instancePath: instancePath + "/connectors", schemaPath: "#/properties/connectors/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err17];
        } else {
          vErrors.push(err17);
        }
        errors++;
      }
    }
    if (data.screws !== void 0) {
      let data14 = data.screws;
      if (Array.isArray(data14)) {
        const len5 = data14.length;
        for (let i5 = 0; i5 < len5; i5++) {
          if (!validate227(data14[i5], { instancePath: instancePath + "/screws/" + i5, parentData: data14, parentDataProperty: i5, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate227.errors : vErrors.concat(validate227.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err18 = { instancePath: instancePath + "/screws", schemaPath: "#/properties/screws/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err18];
        } else {
          vErrors.push(err18);
        }
        errors++;
      }
    }
    if (data.nuts !== void 0) {
      let data16 = data.nuts;
      if (Array.isArray(data16)) {
        const len6 = data16.length;
        for (let i6 = 0; i6 < len6; i6++) {
          if (!validate240(data16[i6], { instancePath: instancePath + "/nuts/" + i6, parentData: data16, parentDataProperty: i6, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate240.errors : vErrors.concat(validate240.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err19 = { instancePath: instancePath + "/nuts", schemaPath: "#/properties/nuts/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err19];
        } else {
          vErrors.push(err19);
        }
        errors++;
      }
    }
    if (data.caps !== void 0) {
      let data18 = data.caps;
      if (Array.isArray(data18)) {
        const len7 = data18.length;
        for (let i7 = 0; i7 < len7; i7++) {
          if (!validate249(data18[i7], { instancePath: instancePath + "/caps/" + i7, parentData: data18, parentDataProperty: i7, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate249.errors : vErrors.concat(validate249.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err20 = { instancePath: instancePath + "/caps", schemaPath: "#/properties/caps/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err20];
        } else {
          vErrors.push(err20);
        }
        errors++;
      }
    }
    if (data.stands !== void 0) {
      let data20 = data.stands;
      if (Array.isArray(data20)) {
        const len8 = data20.length;
        for (let i8 = 0; i8 < len8; i8++) {
          if (!validate255(data20[i8], { instancePath: instancePath + "/stands/" + i8, parentData: data20, parentDataProperty: i8, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate255.errors : vErrors.concat(validate255.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err21 = { instancePath: instancePath + "/stands", schemaPath: "#/properties/stands/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err21];
        } else {
          vErrors.push(err21);
        }
        errors++;
      }
    }
    if (data.sheets !== void 0) {
      let data22 = data.sheets;
      if (Array.isArray(data22)) {
        const len9 = data22.length;
        for (let i9 = 0; i9 < len9; i9++) {
          if (!validate274(data22[i9], { instancePath: instancePath + "/sheets/" + i9, parentData: data22, parentDataProperty: i9, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate274.errors : vErrors.concat(validate274.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err22 = { instancePath: instancePath + "/sheets", schemaPath: "#/properties/sheets/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err22];
        } else {
          vErrors.push(err22);
        }
        errors++;
      }
    }
    if (data.gaskets !== void 0) {
      let data24 = data.gaskets;
      if (Array.isArray(data24)) {
        const len10 = data24.length;
        for (let i10 = 0; i10 < len10; i10++) {
          if (!validate284(data24[i10], { instancePath: instancePath + "/gaskets/" + i10, parentData: data24, parentDataProperty: i10, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate284.errors : vErrors.concat(validate284.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err23 = { instancePath: instancePath + "/gaskets", schemaPath: "#/properties/gaskets/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err23];
        } else {
          vErrors.push(err23);
        }
        errors++;
      }
    }
    if (data.tools !== void 0) {
      let data26 = data.tools;
      if (Array.isArray(data26)) {
        const len11 = data26.length;
        for (let i11 = 0; i11 < len11; i11++) {
          if (!validate290(data26[i11], { instancePath: instancePath + "/tools/" + i11, parentData: data26, parentDataProperty: i11, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate290.errors : vErrors.concat(validate290.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err24 = { instancePath: instancePath + "/tools", schemaPath: "#/properties/tools/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err24];
        } else {
          vErrors.push(err24);
        }
        errors++;
      }
    }
  } else {
    const err25 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err25];
    } else {
      vErrors.push(err25);
    }
    errors++;
  }
  validate52.errors = vErrors;
  return errors === 0;
}
validate52.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var cap = validate303;
function validate303(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate303.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.name === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.profiles === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "profiles" }, message: "must have required property 'profiles'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.thickness === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "thickness" }, message: "must have required property 'thickness'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.mass === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "mass" }, message: "must have required property 'mass'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === "name" || key0 === "profiles" || key0 === "thickness" || key0 === "mass")) {
        const err4 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.name !== void 0) {
      if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.profiles !== void 0) {
      let data1 = data.profiles;
      if (Array.isArray(data1)) {
        if (data1.length < 1) {
          const err5 = { instancePath: instancePath + "/profiles", schemaPath: "#/properties/profiles/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
          if (vErrors === null) {
            vErrors = [err5];
          } else {
            vErrors.push(err5);
          }
          errors++;
        }
        const len0 = data1.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (!validate78(data1[i0], { instancePath: instancePath + "/profiles/" + i0, parentData: data1, parentDataProperty: i0, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate78.errors : vErrors.concat(validate78.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err6 = { instancePath: instancePath + "/profiles", schemaPath: "#/properties/profiles/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
    }
    if (data.thickness !== void 0) {
      if (!validate72(data.thickness, { instancePath: instancePath + "/thickness", parentData: data, parentDataProperty: "thickness", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.mass !== void 0) {
      if (!validate150(data.mass, { instancePath: instancePath + "/mass", parentData: data, parentDataProperty: "mass", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate150.errors : vErrors.concat(validate150.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err7 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err7];
    } else {
      vErrors.push(err7);
    }
    errors++;
  }
  validate303.errors = vErrors;
  return errors === 0;
}
validate303.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var connector = validate308;
function validate308(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate308.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
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
        const err0 = { instancePath, schemaPath: "#/discriminator", keyword: "discriminator", params: { error: "mapping", tag: "kind", tagValue: tag0 }, message: 'value of tag "kind" must be in oneOf' };
        if (vErrors === null) {
          vErrors = [err0];
        } else {
          vErrors.push(err0);
        }
        errors++;
      }
    } else {
      const err1 = { instancePath, schemaPath: "#/discriminator", keyword: "discriminator", params: { error: "tag", tag: "kind", tagValue: tag0 }, message: 'tag "kind" must be string' };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate308.errors = vErrors;
  evaluated0.props = props0;
  return errors === 0;
}
validate308.evaluated = { "dynamicProps": true, "dynamicItems": false };
var gasket = validate316;
function validate316(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate316.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.name === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.slotSize === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "slotSize" }, message: "must have required property 'slotSize'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.sheet === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "sheet" }, message: "must have required property 'sheet'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.depth === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "depth" }, message: "must have required property 'depth'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === "name" || key0 === "slotSize" || key0 === "sheet" || key0 === "depth")) {
        const err4 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.name !== void 0) {
      if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.slotSize !== void 0) {
      if (!validate74(data.slotSize, { instancePath: instancePath + "/slotSize", parentData: data, parentDataProperty: "slotSize", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
        errors = vErrors.length;
      }
    }
    if (data.sheet !== void 0) {
      if (!validate99(data.sheet, { instancePath: instancePath + "/sheet", parentData: data, parentDataProperty: "sheet", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate99.errors : vErrors.concat(validate99.errors);
        errors = vErrors.length;
      }
    }
    if (data.depth !== void 0) {
      if (!validate72(data.depth, { instancePath: instancePath + "/depth", parentData: data, parentDataProperty: "depth", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err5 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err5];
    } else {
      vErrors.push(err5);
    }
    errors++;
  }
  validate316.errors = vErrors;
  return errors === 0;
}
validate316.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var material = validate321;
function validate321(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate321.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.name === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.elasticModulus === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "elasticModulus" }, message: "must have required property 'elasticModulus'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.shearModulus === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "shearModulus" }, message: "must have required property 'shearModulus'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.density === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "density" }, message: "must have required property 'density'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.expansion === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "expansion" }, message: "must have required property 'expansion'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.proof === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "proof" }, message: "must have required property 'proof'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.ultimate === void 0) {
      const err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "ultimate" }, message: "must have required property 'ultimate'" };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    if (data.bucklingClass === void 0) {
      const err7 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "bucklingClass" }, message: "must have required property 'bucklingClass'" };
      if (vErrors === null) {
        vErrors = [err7];
      } else {
        vErrors.push(err7);
      }
      errors++;
    }
    if (data.source === void 0) {
      const err8 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "source" }, message: "must have required property 'source'" };
      if (vErrors === null) {
        vErrors = [err8];
      } else {
        vErrors.push(err8);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func1.call(schema20.properties, key0)) {
        const err9 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
    }
    if (data.name !== void 0) {
      if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.elasticModulus !== void 0) {
      if (!validate56(data.elasticModulus, { instancePath: instancePath + "/elasticModulus", parentData: data, parentDataProperty: "elasticModulus", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate56.errors : vErrors.concat(validate56.errors);
        errors = vErrors.length;
      }
    }
    if (data.shearModulus !== void 0) {
      if (!validate56(data.shearModulus, { instancePath: instancePath + "/shearModulus", parentData: data, parentDataProperty: "shearModulus", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate56.errors : vErrors.concat(validate56.errors);
        errors = vErrors.length;
      }
    }
    if (data.density !== void 0) {
      if (!validate59(data.density, { instancePath: instancePath + "/density", parentData: data, parentDataProperty: "density", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate59.errors : vErrors.concat(validate59.errors);
        errors = vErrors.length;
      }
    }
    if (data.expansion !== void 0) {
      if (!validate61(data.expansion, { instancePath: instancePath + "/expansion", parentData: data, parentDataProperty: "expansion", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate61.errors : vErrors.concat(validate61.errors);
        errors = vErrors.length;
      }
    }
    if (data.proof !== void 0) {
      if (!validate56(data.proof, { instancePath: instancePath + "/proof", parentData: data, parentDataProperty: "proof", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate56.errors : vErrors.concat(validate56.errors);
        errors = vErrors.length;
      }
    }
    if (data.ultimate !== void 0) {
      if (!validate56(data.ultimate, { instancePath: instancePath + "/ultimate", parentData: data, parentDataProperty: "ultimate", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate56.errors : vErrors.concat(validate56.errors);
        errors = vErrors.length;
      }
    }
    if (data.bucklingClass !== void 0) {
      let data7 = data.bucklingClass;
      if (!(data7 === "A" || data7 === "B")) {
        const err10 = { instancePath: instancePath + "/bucklingClass", schemaPath: "#/properties/bucklingClass/enum", keyword: "enum", params: { allowedValues: schema20.properties.bucklingClass.enum }, message: "must be equal to one of the allowed values" };
        if (vErrors === null) {
          vErrors = [err10];
        } else {
          vErrors.push(err10);
        }
        errors++;
      }
    }
    if (data.source !== void 0) {
      if (!validate65(data.source, { instancePath: instancePath + "/source", parentData: data, parentDataProperty: "source", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err11 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err11];
    } else {
      vErrors.push(err11);
    }
    errors++;
  }
  validate321.errors = vErrors;
  return errors === 0;
}
validate321.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var nut = validate330;
function validate330(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate330.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.name === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.kind === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "kind" }, message: "must have required property 'kind'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.slotSize === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "slotSize" }, message: "must have required property 'slotSize'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.thread === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "thread" }, message: "must have required property 'thread'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.length === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "length" }, message: "must have required property 'length'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.width === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "width" }, message: "must have required property 'width'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.thickness === void 0) {
      const err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "thickness" }, message: "must have required property 'thickness'" };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    if (data.engagement === void 0) {
      const err7 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "engagement" }, message: "must have required property 'engagement'" };
      if (vErrors === null) {
        vErrors = [err7];
      } else {
        vErrors.push(err7);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === "name" || key0 === "kind" || key0 === "slotSize" || key0 === "thread" || key0 === "length" || key0 === "width" || key0 === "thickness" || key0 === "engagement")) {
        const err8 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err8];
        } else {
          vErrors.push(err8);
        }
        errors++;
      }
    }
    if (data.name !== void 0) {
      if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.kind !== void 0) {
      let data1 = data.kind;
      if (!(data1 === "end-load" || data1 === "drop-in")) {
        const err9 = { instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/enum", keyword: "enum", params: { allowedValues: schema58.properties.kind.enum }, message: "must be equal to one of the allowed values" };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
    }
    if (data.slotSize !== void 0) {
      if (!validate74(data.slotSize, { instancePath: instancePath + "/slotSize", parentData: data, parentDataProperty: "slotSize", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
        errors = vErrors.length;
      }
    }
    if (data.thread !== void 0) {
      if (!validate89(data.thread, { instancePath: instancePath + "/thread", parentData: data, parentDataProperty: "thread", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate89.errors : vErrors.concat(validate89.errors);
        errors = vErrors.length;
      }
    }
    if (data.length !== void 0) {
      if (!validate72(data.length, { instancePath: instancePath + "/length", parentData: data, parentDataProperty: "length", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.width !== void 0) {
      if (!validate72(data.width, { instancePath: instancePath + "/width", parentData: data, parentDataProperty: "width", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.thickness !== void 0) {
      if (!validate72(data.thickness, { instancePath: instancePath + "/thickness", parentData: data, parentDataProperty: "thickness", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.engagement !== void 0) {
      if (!validate72(data.engagement, { instancePath: instancePath + "/engagement", parentData: data, parentDataProperty: "engagement", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err10 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err10];
    } else {
      vErrors.push(err10);
    }
    errors++;
  }
  validate330.errors = vErrors;
  return errors === 0;
}
validate330.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var profile = validate338;
function validate338(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate338.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
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
        const err0 = { instancePath, schemaPath: "#/discriminator", keyword: "discriminator", params: { error: "mapping", tag: "kind", tagValue: tag0 }, message: 'value of tag "kind" must be in oneOf' };
        if (vErrors === null) {
          vErrors = [err0];
        } else {
          vErrors.push(err0);
        }
        errors++;
      }
    } else {
      const err1 = { instancePath, schemaPath: "#/discriminator", keyword: "discriminator", params: { error: "tag", tag: "kind", tagValue: tag0 }, message: 'tag "kind" must be string' };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate338.errors = vErrors;
  evaluated0.props = props0;
  return errors === 0;
}
validate338.evaluated = { "dynamicProps": true, "dynamicItems": false };
var screwFamily = validate341;
function validate341(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate341.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.name === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.thread === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "thread" }, message: "must have required property 'thread'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.diameter === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "diameter" }, message: "must have required property 'diameter'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.pitch === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "pitch" }, message: "must have required property 'pitch'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.head === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "head" }, message: "must have required property 'head'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.headDiameter === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "headDiameter" }, message: "must have required property 'headDiameter'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.headHeight === void 0) {
      const err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "headHeight" }, message: "must have required property 'headHeight'" };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    if (data.key === void 0) {
      const err7 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "key" }, message: "must have required property 'key'" };
      if (vErrors === null) {
        vErrors = [err7];
      } else {
        vErrors.push(err7);
      }
      errors++;
    }
    if (data.socketDepth === void 0) {
      const err8 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "socketDepth" }, message: "must have required property 'socketDepth'" };
      if (vErrors === null) {
        vErrors = [err8];
      } else {
        vErrors.push(err8);
      }
      errors++;
    }
    if (data.propertyClass === void 0) {
      const err9 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "propertyClass" }, message: "must have required property 'propertyClass'" };
      if (vErrors === null) {
        vErrors = [err9];
      } else {
        vErrors.push(err9);
      }
      errors++;
    }
    if (data.torque === void 0) {
      const err10 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "torque" }, message: "must have required property 'torque'" };
      if (vErrors === null) {
        vErrors = [err10];
      } else {
        vErrors.push(err10);
      }
      errors++;
    }
    if (data.lengths === void 0) {
      const err11 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "lengths" }, message: "must have required property 'lengths'" };
      if (vErrors === null) {
        vErrors = [err11];
      } else {
        vErrors.push(err11);
      }
      errors++;
    }
    if (data.source === void 0) {
      const err12 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "source" }, message: "must have required property 'source'" };
      if (vErrors === null) {
        vErrors = [err12];
      } else {
        vErrors.push(err12);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func1.call(schema57.properties, key0)) {
        const err13 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err13];
        } else {
          vErrors.push(err13);
        }
        errors++;
      }
    }
    if (data.name !== void 0) {
      let data0 = data.name;
      if (!validate54(data0, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
      if (typeof data0 === "string") {
        if (!pattern4.test(data0)) {
          const err14 = { instancePath: instancePath + "/name", schemaPath: "#/properties/name/pattern", keyword: "pattern", params: { pattern: "\\{length\\}" }, message: 'must match pattern "\\{length\\}"' };
          if (vErrors === null) {
            vErrors = [err14];
          } else {
            vErrors.push(err14);
          }
          errors++;
        }
      }
    }
    if (data.thread !== void 0) {
      if (!validate89(data.thread, { instancePath: instancePath + "/thread", parentData: data, parentDataProperty: "thread", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate89.errors : vErrors.concat(validate89.errors);
        errors = vErrors.length;
      }
    }
    if (data.diameter !== void 0) {
      if (!validate72(data.diameter, { instancePath: instancePath + "/diameter", parentData: data, parentDataProperty: "diameter", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.pitch !== void 0) {
      if (!validate72(data.pitch, { instancePath: instancePath + "/pitch", parentData: data, parentDataProperty: "pitch", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.head !== void 0) {
      let data4 = data.head;
      if (!(data4 === "cap" || data4 === "button" || data4 === "countersunk" || data4 === "hex" || data4 === "none")) {
        const err15 = { instancePath: instancePath + "/head", schemaPath: "#/properties/head/enum", keyword: "enum", params: { allowedValues: schema57.properties.head.enum }, message: "must be equal to one of the allowed values" };
        if (vErrors === null) {
          vErrors = [err15];
        } else {
          vErrors.push(err15);
        }
        errors++;
      }
    }
    if (data.headDiameter !== void 0) {
      if (!validate72(data.headDiameter, { instancePath: instancePath + "/headDiameter", parentData: data, parentDataProperty: "headDiameter", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.headHeight !== void 0) {
      if (!validate72(data.headHeight, { instancePath: instancePath + "/headHeight", parentData: data, parentDataProperty: "headHeight", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.key !== void 0) {
      if (!validate72(data.key, { instancePath: instancePath + "/key", parentData: data, parentDataProperty: "key", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.socketDepth !== void 0) {
      if (!validate72(data.socketDepth, { instancePath: instancePath + "/socketDepth", parentData: data, parentDataProperty: "socketDepth", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.propertyClass !== void 0) {
      let data9 = data.propertyClass;
      if (typeof data9 === "string") {
        if (func2(data9) > 40) {
          const err16 = { instancePath: instancePath + "/propertyClass", schemaPath: "#/properties/propertyClass/maxLength", keyword: "maxLength", params: { limit: 40 }, message: "must NOT have more than 40 characters" };
          if (vErrors === null) {
            vErrors = [err16];
          } else {
            vErrors.push(err16);
          }
          errors++;
        }
        if (func2(data9) < 1) {
          const err17 = { instancePath: instancePath + "/propertyClass", schemaPath: "#/properties/propertyClass/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
          if (vErrors === null) {
            vErrors = [err17];
          } else {
            vErrors.push(err17);
          }
          errors++;
        }
      } else {
        const err18 = { instancePath: instancePath + "/propertyClass", schemaPath: "#/properties/propertyClass/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err18];
        } else {
          vErrors.push(err18);
        }
        errors++;
      }
    }
    if (data.torque !== void 0) {
      if (!validate103(data.torque, { instancePath: instancePath + "/torque", parentData: data, parentDataProperty: "torque", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
        errors = vErrors.length;
      }
    }
    if (data.lengths !== void 0) {
      let data11 = data.lengths;
      if (Array.isArray(data11)) {
        if (data11.length < 1) {
          const err19 = { instancePath: instancePath + "/lengths", schemaPath: "#/properties/lengths/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
          if (vErrors === null) {
            vErrors = [err19];
          } else {
            vErrors.push(err19);
          }
          errors++;
        }
        const len0 = data11.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (!validate72(data11[i0], { instancePath: instancePath + "/lengths/" + i0, parentData: data11, parentDataProperty: i0, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err20 = { instancePath: instancePath + "/lengths", schemaPath: "#/properties/lengths/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err20];
        } else {
          vErrors.push(err20);
        }
        errors++;
      }
    }
    if (data.source !== void 0) {
      if (!validate65(data.source, { instancePath: instancePath + "/source", parentData: data, parentDataProperty: "source", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err21 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err21];
    } else {
      vErrors.push(err21);
    }
    errors++;
  }
  validate341.errors = vErrors;
  return errors === 0;
}
validate341.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var series = validate353;
function validate353(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate353.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.name === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.pitch === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "pitch" }, message: "must have required property 'pitch'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.slotSize === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "slotSize" }, message: "must have required property 'slotSize'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.weight === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "weight" }, message: "must have required property 'weight'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.material === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "material" }, message: "must have required property 'material'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.stockLength === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "stockLength" }, message: "must have required property 'stockLength'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.slot === void 0) {
      const err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "slot" }, message: "must have required property 'slot'" };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func1.call(schema26.properties, key0)) {
        const err7 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err7];
        } else {
          vErrors.push(err7);
        }
        errors++;
      }
    }
    if (data.name !== void 0) {
      if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.about !== void 0) {
      if (!validate70(data.about, { instancePath: instancePath + "/about", parentData: data, parentDataProperty: "about", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate70.errors : vErrors.concat(validate70.errors);
        errors = vErrors.length;
      }
    }
    if (data.pitch !== void 0) {
      if (!validate72(data.pitch, { instancePath: instancePath + "/pitch", parentData: data, parentDataProperty: "pitch", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.slotSize !== void 0) {
      if (!validate74(data.slotSize, { instancePath: instancePath + "/slotSize", parentData: data, parentDataProperty: "slotSize", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
        errors = vErrors.length;
      }
    }
    if (data.weight !== void 0) {
      if (!validate76(data.weight, { instancePath: instancePath + "/weight", parentData: data, parentDataProperty: "weight", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors);
        errors = vErrors.length;
      }
    }
    if (data.material !== void 0) {
      if (!validate78(data.material, { instancePath: instancePath + "/material", parentData: data, parentDataProperty: "material", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate78.errors : vErrors.concat(validate78.errors);
        errors = vErrors.length;
      }
    }
    if (data.stockLength !== void 0) {
      if (!validate72(data.stockLength, { instancePath: instancePath + "/stockLength", parentData: data, parentDataProperty: "stockLength", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.slot !== void 0) {
      if (!validate81(data.slot, { instancePath: instancePath + "/slot", parentData: data, parentDataProperty: "slot", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate81.errors : vErrors.concat(validate81.errors);
        errors = vErrors.length;
      }
    }
    if (data.bore !== void 0) {
      let data8 = data.bore;
      if (data8 && typeof data8 == "object" && !Array.isArray(data8)) {
        if (data8.diameter === void 0) {
          const err8 = { instancePath: instancePath + "/bore", schemaPath: "#/properties/bore/required", keyword: "required", params: { missingProperty: "diameter" }, message: "must have required property 'diameter'" };
          if (vErrors === null) {
            vErrors = [err8];
          } else {
            vErrors.push(err8);
          }
          errors++;
        }
        if (data8.thread === void 0) {
          const err9 = { instancePath: instancePath + "/bore", schemaPath: "#/properties/bore/required", keyword: "required", params: { missingProperty: "thread" }, message: "must have required property 'thread'" };
          if (vErrors === null) {
            vErrors = [err9];
          } else {
            vErrors.push(err9);
          }
          errors++;
        }
        for (const key1 in data8) {
          if (!(key1 === "diameter" || key1 === "thread")) {
            const err10 = { instancePath: instancePath + "/bore", schemaPath: "#/properties/bore/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties" };
            if (vErrors === null) {
              vErrors = [err10];
            } else {
              vErrors.push(err10);
            }
            errors++;
          }
        }
        if (data8.diameter !== void 0) {
          if (!validate72(data8.diameter, { instancePath: instancePath + "/bore/diameter", parentData: data8, parentDataProperty: "diameter", rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
            errors = vErrors.length;
          }
        }
        if (data8.thread !== void 0) {
          if (!validate89(data8.thread, { instancePath: instancePath + "/bore/thread", parentData: data8, parentDataProperty: "thread", rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate89.errors : vErrors.concat(validate89.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err11 = { instancePath: instancePath + "/bore", schemaPath: "#/properties/bore/type", keyword: "type", params: { type: "object" }, message: "must be object" };
        if (vErrors === null) {
          vErrors = [err11];
        } else {
          vErrors.push(err11);
        }
        errors++;
      }
    }
    if (data.cornerRadius !== void 0) {
      if (!validate72(data.cornerRadius, { instancePath: instancePath + "/cornerRadius", parentData: data, parentDataProperty: "cornerRadius", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.cornerWall !== void 0) {
      if (!validate72(data.cornerWall, { instancePath: instancePath + "/cornerWall", parentData: data, parentDataProperty: "cornerWall", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.cellWall !== void 0) {
      if (!validate72(data.cellWall, { instancePath: instancePath + "/cellWall", parentData: data, parentDataProperty: "cellWall", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.closedWall !== void 0) {
      if (!validate72(data.closedWall, { instancePath: instancePath + "/closedWall", parentData: data, parentDataProperty: "closedWall", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.chordError !== void 0) {
      if (!validate72(data.chordError, { instancePath: instancePath + "/chordError", parentData: data, parentDataProperty: "chordError", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.lipRating !== void 0) {
      if (!validate96(data.lipRating, { instancePath: instancePath + "/lipRating", parentData: data, parentDataProperty: "lipRating", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate96.errors : vErrors.concat(validate96.errors);
        errors = vErrors.length;
      }
    }
    if (data.lipSource !== void 0) {
      if (!validate65(data.lipSource, { instancePath: instancePath + "/lipSource", parentData: data, parentDataProperty: "lipSource", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
        errors = vErrors.length;
      }
    }
    if (data.ratedNut !== void 0) {
      if (!validate99(data.ratedNut, { instancePath: instancePath + "/ratedNut", parentData: data, parentDataProperty: "ratedNut", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate99.errors : vErrors.concat(validate99.errors);
        errors = vErrors.length;
      }
    }
    if (data.torques !== void 0) {
      if (!validate102(data.torques, { instancePath: instancePath + "/torques", parentData: data, parentDataProperty: "torques", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate102.errors : vErrors.concat(validate102.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err12 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err12];
    } else {
      vErrors.push(err12);
    }
    errors++;
  }
  validate353.errors = vErrors;
  return errors === 0;
}
validate353.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var sheetFamily = validate373;
function validate373(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate373.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.name === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.thicknesses === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "thicknesses" }, message: "must have required property 'thicknesses'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.elasticModulus === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "elasticModulus" }, message: "must have required property 'elasticModulus'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.poisson === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "poisson" }, message: "must have required property 'poisson'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.density === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "density" }, message: "must have required property 'density'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.expansion === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "expansion" }, message: "must have required property 'expansion'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.strength === void 0) {
      const err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "strength" }, message: "must have required property 'strength'" };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    if (data.brittle === void 0) {
      const err7 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "brittle" }, message: "must have required property 'brittle'" };
      if (vErrors === null) {
        vErrors = [err7];
      } else {
        vErrors.push(err7);
      }
      errors++;
    }
    if (data.source === void 0) {
      const err8 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "source" }, message: "must have required property 'source'" };
      if (vErrors === null) {
        vErrors = [err8];
      } else {
        vErrors.push(err8);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func1.call(schema64.properties, key0)) {
        const err9 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
    }
    if (data.name !== void 0) {
      let data0 = data.name;
      if (!validate54(data0, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
      if (typeof data0 === "string") {
        if (!pattern5.test(data0)) {
          const err10 = { instancePath: instancePath + "/name", schemaPath: "#/properties/name/pattern", keyword: "pattern", params: { pattern: "\\{thickness\\}" }, message: 'must match pattern "\\{thickness\\}"' };
          if (vErrors === null) {
            vErrors = [err10];
          } else {
            vErrors.push(err10);
          }
          errors++;
        }
      }
    }
    if (data.thicknesses !== void 0) {
      let data1 = data.thicknesses;
      if (Array.isArray(data1)) {
        if (data1.length < 1) {
          const err11 = { instancePath: instancePath + "/thicknesses", schemaPath: "#/properties/thicknesses/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
          if (vErrors === null) {
            vErrors = [err11];
          } else {
            vErrors.push(err11);
          }
          errors++;
        }
        const len0 = data1.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (!validate72(data1[i0], { instancePath: instancePath + "/thicknesses/" + i0, parentData: data1, parentDataProperty: i0, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err12 = { instancePath: instancePath + "/thicknesses", schemaPath: "#/properties/thicknesses/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err12];
        } else {
          vErrors.push(err12);
        }
        errors++;
      }
    }
    if (data.elasticModulus !== void 0) {
      if (!validate56(data.elasticModulus, { instancePath: instancePath + "/elasticModulus", parentData: data, parentDataProperty: "elasticModulus", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate56.errors : vErrors.concat(validate56.errors);
        errors = vErrors.length;
      }
    }
    if (data.poisson !== void 0) {
      let data4 = data.poisson;
      if (typeof data4 == "number" && isFinite(data4)) {
        if (data4 < 0 || isNaN(data4)) {
          const err13 = { instancePath: instancePath + "/poisson", schemaPath: "#/properties/poisson/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
          if (vErrors === null) {
            vErrors = [err13];
          } else {
            vErrors.push(err13);
          }
          errors++;
        }
        if (data4 >= 0.5 || isNaN(data4)) {
          const err14 = { instancePath: instancePath + "/poisson", schemaPath: "#/properties/poisson/exclusiveMaximum", keyword: "exclusiveMaximum", params: { comparison: "<", limit: 0.5 }, message: "must be < 0.5" };
          if (vErrors === null) {
            vErrors = [err14];
          } else {
            vErrors.push(err14);
          }
          errors++;
        }
      } else {
        const err15 = { instancePath: instancePath + "/poisson", schemaPath: "#/properties/poisson/type", keyword: "type", params: { type: "number" }, message: "must be number" };
        if (vErrors === null) {
          vErrors = [err15];
        } else {
          vErrors.push(err15);
        }
        errors++;
      }
    }
    if (data.shearModulus !== void 0) {
      if (!validate56(data.shearModulus, { instancePath: instancePath + "/shearModulus", parentData: data, parentDataProperty: "shearModulus", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate56.errors : vErrors.concat(validate56.errors);
        errors = vErrors.length;
      }
    }
    if (data.density !== void 0) {
      if (!validate59(data.density, { instancePath: instancePath + "/density", parentData: data, parentDataProperty: "density", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate59.errors : vErrors.concat(validate59.errors);
        errors = vErrors.length;
      }
    }
    if (data.expansion !== void 0) {
      if (!validate61(data.expansion, { instancePath: instancePath + "/expansion", parentData: data, parentDataProperty: "expansion", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate61.errors : vErrors.concat(validate61.errors);
        errors = vErrors.length;
      }
    }
    if (data.strength !== void 0) {
      if (!validate56(data.strength, { instancePath: instancePath + "/strength", parentData: data, parentDataProperty: "strength", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate56.errors : vErrors.concat(validate56.errors);
        errors = vErrors.length;
      }
    }
    if (data.moisture !== void 0) {
      let data9 = data.moisture;
      if (typeof data9 == "number" && isFinite(data9)) {
        if (data9 > 0.05 || isNaN(data9)) {
          const err16 = { instancePath: instancePath + "/moisture", schemaPath: "#/properties/moisture/maximum", keyword: "maximum", params: { comparison: "<=", limit: 0.05 }, message: "must be <= 0.05" };
          if (vErrors === null) {
            vErrors = [err16];
          } else {
            vErrors.push(err16);
          }
          errors++;
        }
        if (data9 < 0 || isNaN(data9)) {
          const err17 = { instancePath: instancePath + "/moisture", schemaPath: "#/properties/moisture/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
          if (vErrors === null) {
            vErrors = [err17];
          } else {
            vErrors.push(err17);
          }
          errors++;
        }
      } else {
        const err18 = { instancePath: instancePath + "/moisture", schemaPath: "#/properties/moisture/type", keyword: "type", params: { type: "number" }, message: "must be number" };
        if (vErrors === null) {
          vErrors = [err18];
        } else {
          vErrors.push(err18);
        }
        errors++;
      }
    }
    if (data.brittle !== void 0) {
      if (typeof data.brittle !== "boolean") {
        const err19 = { instancePath: instancePath + "/brittle", schemaPath: "#/properties/brittle/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" };
        if (vErrors === null) {
          vErrors = [err19];
        } else {
          vErrors.push(err19);
        }
        errors++;
      }
    }
    if (data.source !== void 0) {
      if (!validate65(data.source, { instancePath: instancePath + "/source", parentData: data, parentDataProperty: "source", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err20 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err20];
    } else {
      vErrors.push(err20);
    }
    errors++;
  }
  validate373.errors = vErrors;
  return errors === 0;
}
validate373.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var stockStand = validate382;
function validate382(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate382.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.name === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.kind === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "kind" }, message: "must have required property 'kind'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.mount === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "mount" }, message: "must have required property 'mount'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.diameter === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "diameter" }, message: "must have required property 'diameter'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.collar === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "collar" }, message: "must have required property 'collar'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.raise === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "raise" }, message: "must have required property 'raise'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.capacity === void 0) {
      const err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "capacity" }, message: "must have required property 'capacity'" };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    if (data.mass === void 0) {
      const err7 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "mass" }, message: "must have required property 'mass'" };
      if (vErrors === null) {
        vErrors = [err7];
      } else {
        vErrors.push(err7);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func1.call(schema60.properties, key0)) {
        const err8 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err8];
        } else {
          vErrors.push(err8);
        }
        errors++;
      }
    }
    if (data.name !== void 0) {
      if (!validate54(data.name, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.kind !== void 0) {
      let data1 = data.kind;
      if (!(data1 === "foot" || data1 === "caster")) {
        const err9 = { instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/enum", keyword: "enum", params: { allowedValues: schema60.properties.kind.enum }, message: "must be equal to one of the allowed values" };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
    }
    if (data.mount !== void 0) {
      if (!validate257(data.mount, { instancePath: instancePath + "/mount", parentData: data, parentDataProperty: "mount", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate257.errors : vErrors.concat(validate257.errors);
        errors = vErrors.length;
      }
    }
    if (data.diameter !== void 0) {
      if (!validate72(data.diameter, { instancePath: instancePath + "/diameter", parentData: data, parentDataProperty: "diameter", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.collar !== void 0) {
      if (!validate72(data.collar, { instancePath: instancePath + "/collar", parentData: data, parentDataProperty: "collar", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
        errors = vErrors.length;
      }
    }
    if (data.raise !== void 0) {
      if (!validate99(data.raise, { instancePath: instancePath + "/raise", parentData: data, parentDataProperty: "raise", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate99.errors : vErrors.concat(validate99.errors);
        errors = vErrors.length;
      }
    }
    if (data.capacity !== void 0) {
      if (!validate96(data.capacity, { instancePath: instancePath + "/capacity", parentData: data, parentDataProperty: "capacity", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate96.errors : vErrors.concat(validate96.errors);
        errors = vErrors.length;
      }
    }
    if (data.brake !== void 0) {
      if (typeof data.brake !== "boolean") {
        const err10 = { instancePath: instancePath + "/brake", schemaPath: "#/properties/brake/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" };
        if (vErrors === null) {
          vErrors = [err10];
        } else {
          vErrors.push(err10);
        }
        errors++;
      }
    }
    if (data.swivel !== void 0) {
      if (typeof data.swivel !== "boolean") {
        const err11 = { instancePath: instancePath + "/swivel", schemaPath: "#/properties/swivel/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" };
        if (vErrors === null) {
          vErrors = [err11];
        } else {
          vErrors.push(err11);
        }
        errors++;
      }
    }
    if (data.mass !== void 0) {
      if (!validate150(data.mass, { instancePath: instancePath + "/mass", parentData: data, parentDataProperty: "mass", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate150.errors : vErrors.concat(validate150.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err12 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err12];
    } else {
      vErrors.push(err12);
    }
    errors++;
  }
  validate382.errors = vErrors;
  return errors === 0;
}
validate382.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
var toolFamily = validate390;
function validate390(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate390.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.name === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.kind === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "kind" }, message: "must have required property 'kind'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.swing === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "swing" }, message: "must have required property 'swing'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.tilt === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "tilt" }, message: "must have required property 'tilt'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.sizes === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "sizes" }, message: "must have required property 'sizes'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.source === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "source" }, message: "must have required property 'source'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === "name" || key0 === "kind" || key0 === "swing" || key0 === "tilt" || key0 === "sizes" || key0 === "source")) {
        const err6 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
    }
    if (data.name !== void 0) {
      let data0 = data.name;
      if (!validate54(data0, { instancePath: instancePath + "/name", parentData: data, parentDataProperty: "name", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
      if (typeof data0 === "string") {
        if (!pattern6.test(data0)) {
          const err7 = { instancePath: instancePath + "/name", schemaPath: "#/properties/name/pattern", keyword: "pattern", params: { pattern: "\\{size\\}" }, message: 'must match pattern "\\{size\\}"' };
          if (vErrors === null) {
            vErrors = [err7];
          } else {
            vErrors.push(err7);
          }
          errors++;
        }
      }
    }
    if (data.kind !== void 0) {
      let data1 = data.kind;
      if (!(data1 === "hex-key" || data1 === "ball-end-key" || data1 === "t-handle" || data1 === "bit-ratchet" || data1 === "wrench")) {
        const err8 = { instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/enum", keyword: "enum", params: { allowedValues: schema66.properties.kind.enum }, message: "must be equal to one of the allowed values" };
        if (vErrors === null) {
          vErrors = [err8];
        } else {
          vErrors.push(err8);
        }
        errors++;
      }
    }
    if (data.swing !== void 0) {
      if (!validate292(data.swing, { instancePath: instancePath + "/swing", parentData: data, parentDataProperty: "swing", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate292.errors : vErrors.concat(validate292.errors);
        errors = vErrors.length;
      }
    }
    if (data.tilt !== void 0) {
      if (!validate292(data.tilt, { instancePath: instancePath + "/tilt", parentData: data, parentDataProperty: "tilt", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate292.errors : vErrors.concat(validate292.errors);
        errors = vErrors.length;
      }
    }
    if (data.sizes !== void 0) {
      let data4 = data.sizes;
      if (Array.isArray(data4)) {
        if (data4.length < 1) {
          const err9 = { instancePath: instancePath + "/sizes", schemaPath: "#/properties/sizes/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
          if (vErrors === null) {
            vErrors = [err9];
          } else {
            vErrors.push(err9);
          }
          errors++;
        }
        const len0 = data4.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (!validate295(data4[i0], { instancePath: instancePath + "/sizes/" + i0, parentData: data4, parentDataProperty: i0, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate295.errors : vErrors.concat(validate295.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err10 = { instancePath: instancePath + "/sizes", schemaPath: "#/properties/sizes/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err10];
        } else {
          vErrors.push(err10);
        }
        errors++;
      }
    }
    if (data.source !== void 0) {
      if (!validate65(data.source, { instancePath: instancePath + "/source", parentData: data, parentDataProperty: "source", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err11 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err11];
    } else {
      vErrors.push(err11);
    }
    errors++;
  }
  validate390.errors = vErrors;
  return errors === 0;
}
validate390.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
export {
  cap,
  connector,
  gasket,
  material,
  nut,
  profile,
  screwFamily,
  series,
  sheetFamily,
  stockStand,
  toolFamily,
  whole
};
