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
var schema19 = { "$schema": "https://json-schema.org/draft/2020-12/schema", "$id": "https://trysquare.invalid/schema/house-1.json", "title": "HouseFile", "description": "A team's choices, format 1: which rules, how strict, which limits, own rules, stock and concessions. Paths are relative to this file.", "type": "object", "required": ["format"], "additionalProperties": false, "properties": { "$schema": { "type": "string", "description": "Where an editor finds this schema." }, "format": { "const": 1, "description": "The version of this file format: 1." }, "notes": { "description": "Free words for the reader of the file.", "anyOf": [{ "type": "string" }, { "type": "array", "items": { "type": "string" } }] }, "basedOn": { "type": "array", "items": { "$ref": "#/$defs/path" }, "description": "House files whose choices hold where this file does not say otherwise; later ones before earlier ones.", "examples": [["../workshop.house.json"]] }, "method": { "$ref": "#/$defs/method" }, "criteria": { "$ref": "#/$defs/criteria" }, "strictness": { "$ref": "#/$defs/strictness" }, "areas": { "type": "array", "items": { "$ref": "#/$defs/area" }, "description": "Other choices for some of the frame files; later areas before earlier ones." }, "rules": { "type": "array", "items": { "$ref": "#/$defs/path" }, "description": "Modules with rules of the team. They are run only when the command line names the house file.", "examples": [["./rules/gusset-gap.js"]] }, "stock": { "type": "array", "items": { "$ref": "#/$defs/path" }, "description": "Stock files of the team, for every frame; a frame's own come after them.", "examples": [["./workshop.stock.json"]] }, "concessions": { "$ref": "#/$defs/path", "description": "The file of concessions." } }, "$defs": { "method": { "enum": ["partial-factors", "allowable-stress"], "x-expected": "partial-factors or allowable-stress", "description": "How strength is judged where a frame does not say: partial-factors (usual) or allowable-stress." }, "path": { "type": "string", "minLength": 1, "maxLength": 4096, "description": "A file, relative to this one, with forward slashes.", "x-expected": "a relative path" }, "ruleId": { "type": "string", "minLength": 3, "maxLength": 256, "description": "Id of a rule; `trysquare rules` lists them.", "examples": ["bar.sags"] }, "strictness": { "type": "object", "description": "How strict to be about rules, by id.", "propertyNames": { "$ref": "#/$defs/ruleId" }, "additionalProperties": { "enum": ["note", "hold", "reject", "off"], "x-expected": "one of note, hold, reject, off" }, "examples": [{ "bar.twists": "note", "end.bare": "off" }] }, "criterion": { "description": 'A limit: a value, a share of the span ("span / 300"), or a value with its basis.', "anyOf": [{ "type": ["number", "string"], "maxLength": 64 }, { "type": "object", "required": ["value", "basis"], "additionalProperties": false, "properties": { "value": { "type": ["number", "string"], "maxLength": 64 }, "basis": { "type": "string", "minLength": 1, "maxLength": 400, "description": "Where the limit comes from." } } }], "examples": ["span / 500", { "value": "2 mm", "basis": "customer drawing" }] }, "criteria": { "type": "object", "description": "Limits used instead of the usual ones, by criterion name.", "additionalProperties": { "$ref": "#/$defs/criterion" }, "examples": [{ "joint-gap": "0.3 mm" }] }, "area": { "type": "object", "required": ["frames"], "additionalProperties": false, "description": "Choices for some frame files.", "properties": { "frames": { "type": "array", "minItems": 1, "items": { "type": "string", "minLength": 1, "maxLength": 1024 }, "description": "Patterns of frame files, relative to this file: * stands for any part of a name, ** for any folders.", "examples": [["guards/**"]] }, "method": { "$ref": "#/$defs/method" }, "criteria": { "$ref": "#/$defs/criteria" }, "strictness": { "$ref": "#/$defs/strictness" } } } } };
var func1 = Object.prototype.hasOwnProperty;
var func2 = require_ucs2length().default;
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
    if (typeof data === "string") {
      if (func2(data) > 4096) {
        validate53.errors = [{ instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 4096 }, message: "must NOT have more than 4096 characters" }];
        return false;
      } else {
        if (func2(data) < 1) {
          validate53.errors = [{ instancePath, schemaPath: "#/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
          return false;
        }
      }
    } else {
      validate53.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
      return false;
    }
  }
  validate53.errors = vErrors;
  return errors === 0;
}
validate53.evaluated = { "dynamicProps": false, "dynamicItems": false };
var schema21 = { "enum": ["partial-factors", "allowable-stress"], "x-expected": "partial-factors or allowable-stress", "description": "How strength is judged where a frame does not say: partial-factors (usual) or allowable-stress." };
function validate55(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate55.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (!(data === "partial-factors" || data === "allowable-stress")) {
    validate55.errors = [{ instancePath, schemaPath: "#/enum", keyword: "enum", params: { allowedValues: schema21.enum }, message: "must be equal to one of the allowed values" }];
    return false;
  }
  validate55.errors = vErrors;
  return errors === 0;
}
validate55.evaluated = { "dynamicProps": false, "dynamicItems": false };
var schema23 = { "description": 'A limit: a value, a share of the span ("span / 300"), or a value with its basis.', "anyOf": [{ "type": ["number", "string"], "maxLength": 64 }, { "type": "object", "required": ["value", "basis"], "additionalProperties": false, "properties": { "value": { "type": ["number", "string"], "maxLength": 64 }, "basis": { "type": "string", "minLength": 1, "maxLength": 400, "description": "Where the limit comes from." } } }], "examples": ["span / 500", { "value": "2 mm", "basis": "customer drawing" }] };
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
  const _errs0 = errors;
  let valid0 = false;
  const _errs1 = errors;
  if (!(typeof data == "number" && isFinite(data)) && typeof data !== "string") {
    const err0 = { instancePath, schemaPath: "#/anyOf/0/type", keyword: "type", params: { type: schema23.anyOf[0].type }, message: "must be number,string" };
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
              const err4 = { instancePath: instancePath + "/value", schemaPath: "#/anyOf/1/properties/value/type", keyword: "type", params: { type: schema23.anyOf[1].properties.value.type }, message: "must be number,string" };
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
    validate58.errors = vErrors;
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
  validate58.errors = vErrors;
  evaluated0.props = props0;
  return errors === 0;
}
validate58.evaluated = { "dynamicProps": true, "dynamicItems": false };
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
      for (const key0 in data) {
        const _errs2 = errors;
        if (!validate58(data[key0], { instancePath: instancePath + "/" + key0.replace(/~/g, "~0").replace(/\//g, "~1"), parentData: data, parentDataProperty: key0, rootData, dynamicAnchors })) {
          vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
          errors = vErrors.length;
        }
        var valid0 = _errs2 === errors;
        if (!valid0) {
          break;
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
var schema24 = { "type": "object", "description": "How strict to be about rules, by id.", "propertyNames": { "$ref": "#/$defs/ruleId" }, "additionalProperties": { "enum": ["note", "hold", "reject", "off"], "x-expected": "one of note, hold, reject, off" }, "examples": [{ "bar.twists": "note", "end.bare": "off" }] };
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
    if (typeof data === "string") {
      if (func2(data) > 256) {
        validate62.errors = [{ instancePath, schemaPath: "#/maxLength", keyword: "maxLength", params: { limit: 256 }, message: "must NOT have more than 256 characters" }];
        return false;
      } else {
        if (func2(data) < 3) {
          validate62.errors = [{ instancePath, schemaPath: "#/minLength", keyword: "minLength", params: { limit: 3 }, message: "must NOT have fewer than 3 characters" }];
          return false;
        }
      }
    } else {
      validate62.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
      return false;
    }
  }
  validate62.errors = vErrors;
  return errors === 0;
}
validate62.evaluated = { "dynamicProps": false, "dynamicItems": false };
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
    if (data && typeof data == "object" && !Array.isArray(data)) {
      for (const key0 in data) {
        const _errs1 = errors;
        if (!validate62(key0, { instancePath, parentData: data, parentDataProperty, rootData, dynamicAnchors })) {
          vErrors = vErrors === null ? validate62.errors : vErrors.concat(validate62.errors);
          errors = vErrors.length;
        }
        var valid0 = _errs1 === errors;
        if (!valid0) {
          const err0 = { instancePath, schemaPath: "#/propertyNames", keyword: "propertyNames", params: { propertyName: key0 }, message: "property name must be valid" };
          if (vErrors === null) {
            vErrors = [err0];
          } else {
            vErrors.push(err0);
          }
          errors++;
          validate61.errors = vErrors;
          return false;
          break;
        }
      }
      if (valid0) {
        for (const key1 in data) {
          let data0 = data[key1];
          const _errs3 = errors;
          if (!(data0 === "note" || data0 === "hold" || data0 === "reject" || data0 === "off")) {
            validate61.errors = [{ instancePath: instancePath + "/" + key1.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/additionalProperties/enum", keyword: "enum", params: { allowedValues: schema24.additionalProperties.enum }, message: "must be equal to one of the allowed values" }];
            return false;
          }
          var valid1 = _errs3 === errors;
          if (!valid1) {
            break;
          }
        }
      }
    } else {
      validate61.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate61.errors = vErrors;
  return errors === 0;
}
validate61.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
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
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.frames === void 0 && (missing0 = "frames")) {
        validate65.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "frames" || key0 === "method" || key0 === "criteria" || key0 === "strictness")) {
            validate65.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.frames !== void 0) {
            let data0 = data.frames;
            const _errs2 = errors;
            if (errors === _errs2) {
              if (Array.isArray(data0)) {
                if (data0.length < 1) {
                  validate65.errors = [{ instancePath: instancePath + "/frames", schemaPath: "#/properties/frames/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" }];
                  return false;
                } else {
                  var valid1 = true;
                  const len0 = data0.length;
                  for (let i0 = 0; i0 < len0; i0++) {
                    let data1 = data0[i0];
                    const _errs4 = errors;
                    if (errors === _errs4) {
                      if (typeof data1 === "string") {
                        if (func2(data1) > 1024) {
                          validate65.errors = [{ instancePath: instancePath + "/frames/" + i0, schemaPath: "#/properties/frames/items/maxLength", keyword: "maxLength", params: { limit: 1024 }, message: "must NOT have more than 1024 characters" }];
                          return false;
                        } else {
                          if (func2(data1) < 1) {
                            validate65.errors = [{ instancePath: instancePath + "/frames/" + i0, schemaPath: "#/properties/frames/items/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
                            return false;
                          }
                        }
                      } else {
                        validate65.errors = [{ instancePath: instancePath + "/frames/" + i0, schemaPath: "#/properties/frames/items/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                        return false;
                      }
                    }
                    var valid1 = _errs4 === errors;
                    if (!valid1) {
                      break;
                    }
                  }
                }
              } else {
                validate65.errors = [{ instancePath: instancePath + "/frames", schemaPath: "#/properties/frames/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                return false;
              }
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.method !== void 0) {
              const _errs6 = errors;
              if (!validate55(data.method, { instancePath: instancePath + "/method", parentData: data, parentDataProperty: "method", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate55.errors : vErrors.concat(validate55.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs6 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.criteria !== void 0) {
                const _errs7 = errors;
                if (!validate57(data.criteria, { instancePath: instancePath + "/criteria", parentData: data, parentDataProperty: "criteria", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate57.errors : vErrors.concat(validate57.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs7 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.strictness !== void 0) {
                  const _errs8 = errors;
                  if (!validate61(data.strictness, { instancePath: instancePath + "/strictness", parentData: data, parentDataProperty: "strictness", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate61.errors : vErrors.concat(validate61.errors);
                    errors = vErrors.length;
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
    } else {
      validate65.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate65.errors = vErrors;
  return errors === 0;
}
validate65.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
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
      if (data.format === void 0 && (missing0 = "format")) {
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
              if (data.notes !== void 0) {
                let data2 = data.notes;
                const _errs5 = errors;
                const _errs6 = errors;
                let valid1 = false;
                const _errs7 = errors;
                if (typeof data2 !== "string") {
                  const err0 = { instancePath: instancePath + "/notes", schemaPath: "#/properties/notes/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err0];
                  } else {
                    vErrors.push(err0);
                  }
                  errors++;
                }
                var _valid0 = _errs7 === errors;
                valid1 = valid1 || _valid0;
                const _errs9 = errors;
                if (errors === _errs9) {
                  if (Array.isArray(data2)) {
                    var valid2 = true;
                    const len0 = data2.length;
                    for (let i0 = 0; i0 < len0; i0++) {
                      const _errs11 = errors;
                      if (typeof data2[i0] !== "string") {
                        const err1 = { instancePath: instancePath + "/notes/" + i0, schemaPath: "#/properties/notes/anyOf/1/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                        if (vErrors === null) {
                          vErrors = [err1];
                        } else {
                          vErrors.push(err1);
                        }
                        errors++;
                      }
                      var valid2 = _errs11 === errors;
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
                var _valid0 = _errs9 === errors;
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
                  errors = _errs6;
                  if (vErrors !== null) {
                    if (_errs6) {
                      vErrors.length = _errs6;
                    } else {
                      vErrors = null;
                    }
                  }
                }
                var valid0 = _errs5 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.basedOn !== void 0) {
                  let data4 = data.basedOn;
                  const _errs13 = errors;
                  if (errors === _errs13) {
                    if (Array.isArray(data4)) {
                      var valid3 = true;
                      const len1 = data4.length;
                      for (let i1 = 0; i1 < len1; i1++) {
                        const _errs15 = errors;
                        if (!validate53(data4[i1], { instancePath: instancePath + "/basedOn/" + i1, parentData: data4, parentDataProperty: i1, rootData, dynamicAnchors })) {
                          vErrors = vErrors === null ? validate53.errors : vErrors.concat(validate53.errors);
                          errors = vErrors.length;
                        }
                        var valid3 = _errs15 === errors;
                        if (!valid3) {
                          break;
                        }
                      }
                    } else {
                      validate52.errors = [{ instancePath: instancePath + "/basedOn", schemaPath: "#/properties/basedOn/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                      return false;
                    }
                  }
                  var valid0 = _errs13 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.method !== void 0) {
                    const _errs16 = errors;
                    if (!validate55(data.method, { instancePath: instancePath + "/method", parentData: data, parentDataProperty: "method", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate55.errors : vErrors.concat(validate55.errors);
                      errors = vErrors.length;
                    }
                    var valid0 = _errs16 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.criteria !== void 0) {
                      const _errs17 = errors;
                      if (!validate57(data.criteria, { instancePath: instancePath + "/criteria", parentData: data, parentDataProperty: "criteria", rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate57.errors : vErrors.concat(validate57.errors);
                        errors = vErrors.length;
                      }
                      var valid0 = _errs17 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.strictness !== void 0) {
                        const _errs18 = errors;
                        if (!validate61(data.strictness, { instancePath: instancePath + "/strictness", parentData: data, parentDataProperty: "strictness", rootData, dynamicAnchors })) {
                          vErrors = vErrors === null ? validate61.errors : vErrors.concat(validate61.errors);
                          errors = vErrors.length;
                        }
                        var valid0 = _errs18 === errors;
                      } else {
                        var valid0 = true;
                      }
                      if (valid0) {
                        if (data.areas !== void 0) {
                          let data9 = data.areas;
                          const _errs19 = errors;
                          if (errors === _errs19) {
                            if (Array.isArray(data9)) {
                              var valid4 = true;
                              const len2 = data9.length;
                              for (let i2 = 0; i2 < len2; i2++) {
                                const _errs21 = errors;
                                if (!validate65(data9[i2], { instancePath: instancePath + "/areas/" + i2, parentData: data9, parentDataProperty: i2, rootData, dynamicAnchors })) {
                                  vErrors = vErrors === null ? validate65.errors : vErrors.concat(validate65.errors);
                                  errors = vErrors.length;
                                }
                                var valid4 = _errs21 === errors;
                                if (!valid4) {
                                  break;
                                }
                              }
                            } else {
                              validate52.errors = [{ instancePath: instancePath + "/areas", schemaPath: "#/properties/areas/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                              return false;
                            }
                          }
                          var valid0 = _errs19 === errors;
                        } else {
                          var valid0 = true;
                        }
                        if (valid0) {
                          if (data.rules !== void 0) {
                            let data11 = data.rules;
                            const _errs22 = errors;
                            if (errors === _errs22) {
                              if (Array.isArray(data11)) {
                                var valid5 = true;
                                const len3 = data11.length;
                                for (let i3 = 0; i3 < len3; i3++) {
                                  const _errs24 = errors;
                                  if (!validate53(data11[i3], { instancePath: instancePath + "/rules/" + i3, parentData: data11, parentDataProperty: i3, rootData, dynamicAnchors })) {
                                    vErrors = vErrors === null ? validate53.errors : vErrors.concat(validate53.errors);
                                    errors = vErrors.length;
                                  }
                                  var valid5 = _errs24 === errors;
                                  if (!valid5) {
                                    break;
                                  }
                                }
                              } else {
                                validate52.errors = [{ instancePath: instancePath + "/rules", schemaPath: "#/properties/rules/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                return false;
                              }
                            }
                            var valid0 = _errs22 === errors;
                          } else {
                            var valid0 = true;
                          }
                          if (valid0) {
                            if (data.stock !== void 0) {
                              let data13 = data.stock;
                              const _errs25 = errors;
                              if (errors === _errs25) {
                                if (Array.isArray(data13)) {
                                  var valid6 = true;
                                  const len4 = data13.length;
                                  for (let i4 = 0; i4 < len4; i4++) {
                                    const _errs27 = errors;
                                    if (!validate53(data13[i4], { instancePath: instancePath + "/stock/" + i4, parentData: data13, parentDataProperty: i4, rootData, dynamicAnchors })) {
                                      vErrors = vErrors === null ? validate53.errors : vErrors.concat(validate53.errors);
                                      errors = vErrors.length;
                                    }
                                    var valid6 = _errs27 === errors;
                                    if (!valid6) {
                                      break;
                                    }
                                  }
                                } else {
                                  validate52.errors = [{ instancePath: instancePath + "/stock", schemaPath: "#/properties/stock/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                  return false;
                                }
                              }
                              var valid0 = _errs25 === errors;
                            } else {
                              var valid0 = true;
                            }
                            if (valid0) {
                              if (data.concessions !== void 0) {
                                const _errs28 = errors;
                                if (!validate53(data.concessions, { instancePath: instancePath + "/concessions", parentData: data, parentDataProperty: "concessions", rootData, dynamicAnchors })) {
                                  vErrors = vErrors === null ? validate53.errors : vErrors.concat(validate53.errors);
                                  errors = vErrors.length;
                                }
                                var valid0 = _errs28 === errors;
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
