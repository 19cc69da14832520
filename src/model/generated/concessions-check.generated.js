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
var schema20 = { "type": "object", "required": ["rule", "at", "reason", "who", "until"], "additionalProperties": false, "description": "Permission for one finding.", "properties": { "rule": { "type": "string", "minLength": 3, "maxLength": 256, "description": "Id of the rule." }, "message": { "type": "string", "minLength": 1, "maxLength": 64, "description": "Which message of the rule; any of them when left out." }, "at": { "type": "array", "minItems": 1, "items": { "type": "string", "minLength": 1, "maxLength": 256 }, "description": "Ids of the parts, as findings name them.", "examples": [["rail-3"]] }, "frames": { "type": "array", "minItems": 1, "items": { "type": "string", "minLength": 1, "maxLength": 1024 }, "description": "Patterns of frame files, relative to this file; every frame of the house when left out.", "examples": [["benches/*.frame.json"]] }, "measured": { "type": ["number", "string"], "maxLength": 64, "description": "The measured value when it was granted, as the report printed it. The concession lapses when the value gets worse.", "examples": ["8.1 mm"] }, "reason": { "type": "string", "minLength": 1, "maxLength": 1e3, "description": "Why it may stay so." }, "who": { "type": "string", "minLength": 1, "maxLength": 200, "description": "Who granted it." }, "until": { "type": "string", "pattern": "^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$", "description": "The last day it holds, as year-month-day.", "x-expected": "a date like 2027-03-31" } } };
var func1 = require_ucs2length().default;
var pattern3 = new RegExp("^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$", "u");
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
      if (data.rule === void 0 && (missing0 = "rule") || data.at === void 0 && (missing0 = "at") || data.reason === void 0 && (missing0 = "reason") || data.who === void 0 && (missing0 = "who") || data.until === void 0 && (missing0 = "until")) {
        validate53.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "rule" || key0 === "message" || key0 === "at" || key0 === "frames" || key0 === "measured" || key0 === "reason" || key0 === "who" || key0 === "until")) {
            validate53.errors = [{ instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
            return false;
            break;
          }
        }
        if (_errs1 === errors) {
          if (data.rule !== void 0) {
            let data0 = data.rule;
            const _errs2 = errors;
            if (errors === _errs2) {
              if (typeof data0 === "string") {
                if (func1(data0) > 256) {
                  validate53.errors = [{ instancePath: instancePath + "/rule", schemaPath: "#/properties/rule/maxLength", keyword: "maxLength", params: { limit: 256 }, message: "must NOT have more than 256 characters" }];
                  return false;
                } else {
                  if (func1(data0) < 3) {
                    validate53.errors = [{ instancePath: instancePath + "/rule", schemaPath: "#/properties/rule/minLength", keyword: "minLength", params: { limit: 3 }, message: "must NOT have fewer than 3 characters" }];
                    return false;
                  }
                }
              } else {
                validate53.errors = [{ instancePath: instancePath + "/rule", schemaPath: "#/properties/rule/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                return false;
              }
            }
            var valid0 = _errs2 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.message !== void 0) {
              let data1 = data.message;
              const _errs4 = errors;
              if (errors === _errs4) {
                if (typeof data1 === "string") {
                  if (func1(data1) > 64) {
                    validate53.errors = [{ instancePath: instancePath + "/message", schemaPath: "#/properties/message/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" }];
                    return false;
                  } else {
                    if (func1(data1) < 1) {
                      validate53.errors = [{ instancePath: instancePath + "/message", schemaPath: "#/properties/message/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
                      return false;
                    }
                  }
                } else {
                  validate53.errors = [{ instancePath: instancePath + "/message", schemaPath: "#/properties/message/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                  return false;
                }
              }
              var valid0 = _errs4 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.at !== void 0) {
                let data2 = data.at;
                const _errs6 = errors;
                if (errors === _errs6) {
                  if (Array.isArray(data2)) {
                    if (data2.length < 1) {
                      validate53.errors = [{ instancePath: instancePath + "/at", schemaPath: "#/properties/at/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" }];
                      return false;
                    } else {
                      var valid1 = true;
                      const len0 = data2.length;
                      for (let i0 = 0; i0 < len0; i0++) {
                        let data3 = data2[i0];
                        const _errs8 = errors;
                        if (errors === _errs8) {
                          if (typeof data3 === "string") {
                            if (func1(data3) > 256) {
                              validate53.errors = [{ instancePath: instancePath + "/at/" + i0, schemaPath: "#/properties/at/items/maxLength", keyword: "maxLength", params: { limit: 256 }, message: "must NOT have more than 256 characters" }];
                              return false;
                            } else {
                              if (func1(data3) < 1) {
                                validate53.errors = [{ instancePath: instancePath + "/at/" + i0, schemaPath: "#/properties/at/items/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
                                return false;
                              }
                            }
                          } else {
                            validate53.errors = [{ instancePath: instancePath + "/at/" + i0, schemaPath: "#/properties/at/items/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                            return false;
                          }
                        }
                        var valid1 = _errs8 === errors;
                        if (!valid1) {
                          break;
                        }
                      }
                    }
                  } else {
                    validate53.errors = [{ instancePath: instancePath + "/at", schemaPath: "#/properties/at/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                    return false;
                  }
                }
                var valid0 = _errs6 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.frames !== void 0) {
                  let data4 = data.frames;
                  const _errs10 = errors;
                  if (errors === _errs10) {
                    if (Array.isArray(data4)) {
                      if (data4.length < 1) {
                        validate53.errors = [{ instancePath: instancePath + "/frames", schemaPath: "#/properties/frames/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" }];
                        return false;
                      } else {
                        var valid2 = true;
                        const len1 = data4.length;
                        for (let i1 = 0; i1 < len1; i1++) {
                          let data5 = data4[i1];
                          const _errs12 = errors;
                          if (errors === _errs12) {
                            if (typeof data5 === "string") {
                              if (func1(data5) > 1024) {
                                validate53.errors = [{ instancePath: instancePath + "/frames/" + i1, schemaPath: "#/properties/frames/items/maxLength", keyword: "maxLength", params: { limit: 1024 }, message: "must NOT have more than 1024 characters" }];
                                return false;
                              } else {
                                if (func1(data5) < 1) {
                                  validate53.errors = [{ instancePath: instancePath + "/frames/" + i1, schemaPath: "#/properties/frames/items/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
                                  return false;
                                }
                              }
                            } else {
                              validate53.errors = [{ instancePath: instancePath + "/frames/" + i1, schemaPath: "#/properties/frames/items/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                              return false;
                            }
                          }
                          var valid2 = _errs12 === errors;
                          if (!valid2) {
                            break;
                          }
                        }
                      }
                    } else {
                      validate53.errors = [{ instancePath: instancePath + "/frames", schemaPath: "#/properties/frames/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                      return false;
                    }
                  }
                  var valid0 = _errs10 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.measured !== void 0) {
                    let data6 = data.measured;
                    const _errs14 = errors;
                    if (!(typeof data6 == "number" && isFinite(data6)) && typeof data6 !== "string") {
                      validate53.errors = [{ instancePath: instancePath + "/measured", schemaPath: "#/properties/measured/type", keyword: "type", params: { type: schema20.properties.measured.type }, message: "must be number,string" }];
                      return false;
                    }
                    if (errors === _errs14) {
                      if (typeof data6 === "string") {
                        if (func1(data6) > 64) {
                          validate53.errors = [{ instancePath: instancePath + "/measured", schemaPath: "#/properties/measured/maxLength", keyword: "maxLength", params: { limit: 64 }, message: "must NOT have more than 64 characters" }];
                          return false;
                        }
                      }
                    }
                    var valid0 = _errs14 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.reason !== void 0) {
                      let data7 = data.reason;
                      const _errs16 = errors;
                      if (errors === _errs16) {
                        if (typeof data7 === "string") {
                          if (func1(data7) > 1e3) {
                            validate53.errors = [{ instancePath: instancePath + "/reason", schemaPath: "#/properties/reason/maxLength", keyword: "maxLength", params: { limit: 1e3 }, message: "must NOT have more than 1000 characters" }];
                            return false;
                          } else {
                            if (func1(data7) < 1) {
                              validate53.errors = [{ instancePath: instancePath + "/reason", schemaPath: "#/properties/reason/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
                              return false;
                            }
                          }
                        } else {
                          validate53.errors = [{ instancePath: instancePath + "/reason", schemaPath: "#/properties/reason/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                          return false;
                        }
                      }
                      var valid0 = _errs16 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.who !== void 0) {
                        let data8 = data.who;
                        const _errs18 = errors;
                        if (errors === _errs18) {
                          if (typeof data8 === "string") {
                            if (func1(data8) > 200) {
                              validate53.errors = [{ instancePath: instancePath + "/who", schemaPath: "#/properties/who/maxLength", keyword: "maxLength", params: { limit: 200 }, message: "must NOT have more than 200 characters" }];
                              return false;
                            } else {
                              if (func1(data8) < 1) {
                                validate53.errors = [{ instancePath: instancePath + "/who", schemaPath: "#/properties/who/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" }];
                                return false;
                              }
                            }
                          } else {
                            validate53.errors = [{ instancePath: instancePath + "/who", schemaPath: "#/properties/who/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                            return false;
                          }
                        }
                        var valid0 = _errs18 === errors;
                      } else {
                        var valid0 = true;
                      }
                      if (valid0) {
                        if (data.until !== void 0) {
                          let data9 = data.until;
                          const _errs20 = errors;
                          if (errors === _errs20) {
                            if (typeof data9 === "string") {
                              if (!pattern3.test(data9)) {
                                validate53.errors = [{ instancePath: instancePath + "/until", schemaPath: "#/properties/until/pattern", keyword: "pattern", params: { pattern: "^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$" }, message: 'must match pattern "^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$"' }];
                                return false;
                              }
                            } else {
                              validate53.errors = [{ instancePath: instancePath + "/until", schemaPath: "#/properties/until/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
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
    } else {
      validate53.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate53.errors = vErrors;
  return errors === 0;
}
validate53.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
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
      if (data.format === void 0 && (missing0 = "format") || data.concessions === void 0 && (missing0 = "concessions")) {
        validate52.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        const _errs1 = errors;
        for (const key0 in data) {
          if (!(key0 === "$schema" || key0 === "format" || key0 === "concessions")) {
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
              if (data.concessions !== void 0) {
                let data2 = data.concessions;
                const _errs5 = errors;
                if (errors === _errs5) {
                  if (Array.isArray(data2)) {
                    var valid1 = true;
                    const len0 = data2.length;
                    for (let i0 = 0; i0 < len0; i0++) {
                      const _errs7 = errors;
                      if (!validate53(data2[i0], { instancePath: instancePath + "/concessions/" + i0, parentData: data2, parentDataProperty: i0, rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate53.errors : vErrors.concat(validate53.errors);
                        errors = vErrors.length;
                      }
                      var valid1 = _errs7 === errors;
                      if (!valid1) {
                        break;
                      }
                    }
                  } else {
                    validate52.errors = [{ instancePath: instancePath + "/concessions", schemaPath: "#/properties/concessions/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
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
