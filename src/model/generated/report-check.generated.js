// Generated from schema/ by `npm run generate`; do not edit.
// <stdin>
var whole = validate52;
var pattern3 = new RegExp("^1\\.[0-9]+$", "u");
var schema21 = { "enum": ["note", "hold", "reject"] };
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
  if (!(data === "note" || data === "hold" || data === "reject")) {
    validate54.errors = [{ instancePath, schemaPath: "#/enum", keyword: "enum", params: { allowedValues: schema21.enum }, message: "must be equal to one of the allowed values" }];
    return false;
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
      let missing0;
      if (data.id === void 0 && (missing0 = "id") || data.title === void 0 && (missing0 = "title") || data.group === void 0 && (missing0 = "group") || data.level === void 0 && (missing0 = "level") || data.basis === void 0 && (missing0 = "basis") || data.messages === void 0 && (missing0 = "messages") || data.criteria === void 0 && (missing0 = "criteria")) {
        validate53.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        if (data.id !== void 0) {
          const _errs1 = errors;
          if (typeof data.id !== "string") {
            validate53.errors = [{ instancePath: instancePath + "/id", schemaPath: "#/properties/id/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
            return false;
          }
          var valid0 = _errs1 === errors;
        } else {
          var valid0 = true;
        }
        if (valid0) {
          if (data.title !== void 0) {
            const _errs3 = errors;
            if (typeof data.title !== "string") {
              validate53.errors = [{ instancePath: instancePath + "/title", schemaPath: "#/properties/title/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
              return false;
            }
            var valid0 = _errs3 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.group !== void 0) {
              const _errs5 = errors;
              if (typeof data.group !== "string") {
                validate53.errors = [{ instancePath: instancePath + "/group", schemaPath: "#/properties/group/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                return false;
              }
              var valid0 = _errs5 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.level !== void 0) {
                const _errs7 = errors;
                if (!validate54(data.level, { instancePath: instancePath + "/level", parentData: data, parentDataProperty: "level", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs7 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.basis !== void 0) {
                  let data4 = data.basis;
                  const _errs8 = errors;
                  if (errors === _errs8) {
                    if (Array.isArray(data4)) {
                      var valid1 = true;
                      const len0 = data4.length;
                      for (let i0 = 0; i0 < len0; i0++) {
                        const _errs10 = errors;
                        if (typeof data4[i0] !== "string") {
                          validate53.errors = [{ instancePath: instancePath + "/basis/" + i0, schemaPath: "#/properties/basis/items/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                          return false;
                        }
                        var valid1 = _errs10 === errors;
                        if (!valid1) {
                          break;
                        }
                      }
                    } else {
                      validate53.errors = [{ instancePath: instancePath + "/basis", schemaPath: "#/properties/basis/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                      return false;
                    }
                  }
                  var valid0 = _errs8 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.messages !== void 0) {
                    let data6 = data.messages;
                    const _errs12 = errors;
                    if (errors === _errs12) {
                      if (data6 && typeof data6 == "object" && !Array.isArray(data6)) {
                        for (const key0 in data6) {
                          let data7 = data6[key0];
                          const _errs15 = errors;
                          if (errors === _errs15) {
                            if (data7 && typeof data7 == "object" && !Array.isArray(data7)) {
                              let missing1;
                              if (data7.text === void 0 && (missing1 = "text")) {
                                validate53.errors = [{ instancePath: instancePath + "/messages/" + key0.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/messages/additionalProperties/required", keyword: "required", params: { missingProperty: missing1 }, message: "must have required property '" + missing1 + "'" }];
                                return false;
                              } else {
                                if (data7.text !== void 0) {
                                  const _errs17 = errors;
                                  if (typeof data7.text !== "string") {
                                    validate53.errors = [{ instancePath: instancePath + "/messages/" + key0.replace(/~/g, "~0").replace(/\//g, "~1") + "/text", schemaPath: "#/properties/messages/additionalProperties/properties/text/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                    return false;
                                  }
                                  var valid3 = _errs17 === errors;
                                } else {
                                  var valid3 = true;
                                }
                                if (valid3) {
                                  if (data7.advice !== void 0) {
                                    const _errs19 = errors;
                                    if (typeof data7.advice !== "string") {
                                      validate53.errors = [{ instancePath: instancePath + "/messages/" + key0.replace(/~/g, "~0").replace(/\//g, "~1") + "/advice", schemaPath: "#/properties/messages/additionalProperties/properties/advice/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                      return false;
                                    }
                                    var valid3 = _errs19 === errors;
                                  } else {
                                    var valid3 = true;
                                  }
                                }
                              }
                            } else {
                              validate53.errors = [{ instancePath: instancePath + "/messages/" + key0.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/messages/additionalProperties/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                              return false;
                            }
                          }
                          var valid2 = _errs15 === errors;
                          if (!valid2) {
                            break;
                          }
                        }
                      } else {
                        validate53.errors = [{ instancePath: instancePath + "/messages", schemaPath: "#/properties/messages/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                        return false;
                      }
                    }
                    var valid0 = _errs12 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.criteria !== void 0) {
                      let data10 = data.criteria;
                      const _errs21 = errors;
                      if (errors === _errs21) {
                        if (Array.isArray(data10)) {
                          var valid4 = true;
                          const len1 = data10.length;
                          for (let i1 = 0; i1 < len1; i1++) {
                            let data11 = data10[i1];
                            const _errs23 = errors;
                            if (errors === _errs23) {
                              if (data11 && typeof data11 == "object" && !Array.isArray(data11)) {
                                let missing2;
                                if (data11.name === void 0 && (missing2 = "name") || data11.quantity === void 0 && (missing2 = "quantity") || data11.standard === void 0 && (missing2 = "standard") || data11.about === void 0 && (missing2 = "about") || data11.basis === void 0 && (missing2 = "basis")) {
                                  validate53.errors = [{ instancePath: instancePath + "/criteria/" + i1, schemaPath: "#/properties/criteria/items/required", keyword: "required", params: { missingProperty: missing2 }, message: "must have required property '" + missing2 + "'" }];
                                  return false;
                                } else {
                                  if (data11.name !== void 0) {
                                    const _errs25 = errors;
                                    if (typeof data11.name !== "string") {
                                      validate53.errors = [{ instancePath: instancePath + "/criteria/" + i1 + "/name", schemaPath: "#/properties/criteria/items/properties/name/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                      return false;
                                    }
                                    var valid5 = _errs25 === errors;
                                  } else {
                                    var valid5 = true;
                                  }
                                  if (valid5) {
                                    if (data11.quantity !== void 0) {
                                      const _errs27 = errors;
                                      if (typeof data11.quantity !== "string") {
                                        validate53.errors = [{ instancePath: instancePath + "/criteria/" + i1 + "/quantity", schemaPath: "#/properties/criteria/items/properties/quantity/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                        return false;
                                      }
                                      var valid5 = _errs27 === errors;
                                    } else {
                                      var valid5 = true;
                                    }
                                    if (valid5) {
                                      if (data11.standard !== void 0) {
                                        const _errs29 = errors;
                                        if (typeof data11.standard !== "string") {
                                          validate53.errors = [{ instancePath: instancePath + "/criteria/" + i1 + "/standard", schemaPath: "#/properties/criteria/items/properties/standard/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                          return false;
                                        }
                                        var valid5 = _errs29 === errors;
                                      } else {
                                        var valid5 = true;
                                      }
                                      if (valid5) {
                                        if (data11.within !== void 0) {
                                          let data15 = data11.within;
                                          const _errs31 = errors;
                                          if (errors === _errs31) {
                                            if (Array.isArray(data15)) {
                                              if (data15.length > 2) {
                                                validate53.errors = [{ instancePath: instancePath + "/criteria/" + i1 + "/within", schemaPath: "#/properties/criteria/items/properties/within/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" }];
                                                return false;
                                              } else {
                                                if (data15.length < 2) {
                                                  validate53.errors = [{ instancePath: instancePath + "/criteria/" + i1 + "/within", schemaPath: "#/properties/criteria/items/properties/within/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" }];
                                                  return false;
                                                } else {
                                                  var valid6 = true;
                                                  const len2 = data15.length;
                                                  for (let i2 = 0; i2 < len2; i2++) {
                                                    const _errs33 = errors;
                                                    if (typeof data15[i2] !== "string") {
                                                      validate53.errors = [{ instancePath: instancePath + "/criteria/" + i1 + "/within/" + i2, schemaPath: "#/properties/criteria/items/properties/within/items/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                                      return false;
                                                    }
                                                    var valid6 = _errs33 === errors;
                                                    if (!valid6) {
                                                      break;
                                                    }
                                                  }
                                                }
                                              }
                                            } else {
                                              validate53.errors = [{ instancePath: instancePath + "/criteria/" + i1 + "/within", schemaPath: "#/properties/criteria/items/properties/within/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                              return false;
                                            }
                                          }
                                          var valid5 = _errs31 === errors;
                                        } else {
                                          var valid5 = true;
                                        }
                                        if (valid5) {
                                          if (data11.about !== void 0) {
                                            const _errs35 = errors;
                                            if (typeof data11.about !== "string") {
                                              validate53.errors = [{ instancePath: instancePath + "/criteria/" + i1 + "/about", schemaPath: "#/properties/criteria/items/properties/about/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                              return false;
                                            }
                                            var valid5 = _errs35 === errors;
                                          } else {
                                            var valid5 = true;
                                          }
                                          if (valid5) {
                                            if (data11.basis !== void 0) {
                                              const _errs37 = errors;
                                              if (typeof data11.basis !== "string") {
                                                validate53.errors = [{ instancePath: instancePath + "/criteria/" + i1 + "/basis", schemaPath: "#/properties/criteria/items/properties/basis/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                                return false;
                                              }
                                              var valid5 = _errs37 === errors;
                                            } else {
                                              var valid5 = true;
                                            }
                                          }
                                        }
                                      }
                                    }
                                  }
                                }
                              } else {
                                validate53.errors = [{ instancePath: instancePath + "/criteria/" + i1, schemaPath: "#/properties/criteria/items/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                                return false;
                              }
                            }
                            var valid4 = _errs23 === errors;
                            if (!valid4) {
                              break;
                            }
                          }
                        } else {
                          validate53.errors = [{ instancePath: instancePath + "/criteria", schemaPath: "#/properties/criteria/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                          return false;
                        }
                      }
                      var valid0 = _errs21 === errors;
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
      validate53.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate53.errors = vErrors;
  return errors === 0;
}
validate53.evaluated = { "props": { "id": true, "title": true, "group": true, "level": true, "basis": true, "messages": true, "criteria": true }, "dynamicProps": false, "dynamicItems": false };
var schema22 = { "type": "object", "required": ["file", "title", "units", "verdict", "complete", "counts", "problems", "findings", "undecided", "rules", "failures", "assumed", "changed", "concessions", "cureTrials"], "properties": { "file": { "type": "string" }, "title": { "type": "string" }, "revision": { "type": "string" }, "units": { "enum": ["mm-N-kg", "in-lbf-lb"] }, "verdict": { "enum": ["accept", "hold", "reject", "unread"] }, "complete": { "type": "boolean", "description": "False when the file could not be read whole, or a rule or fact failed." }, "counts": { "type": "object", "required": ["bars", "joints", "cases", "parts"], "properties": { "bars": { "$ref": "#/$defs/tallyCount" }, "joints": { "$ref": "#/$defs/tallyCount" }, "cases": { "$ref": "#/$defs/tallyCount" }, "parts": { "$ref": "#/$defs/tallyCount" } } }, "problems": { "type": "array", "items": { "$ref": "#/$defs/problem" } }, "findings": { "type": "array", "items": { "$ref": "#/$defs/finding" }, "description": "Worst part first." }, "undecided": { "type": "array", "items": { "type": "object", "required": ["why", "rules", "at", "holds"], "properties": { "why": { "type": "string" }, "rules": { "type": "array", "items": { "type": "string" } }, "at": { "type": "array", "items": { "$ref": "#/$defs/part" } }, "holds": { "type": "boolean", "description": "Whether it keeps the frame from accept." } } } }, "rules": { "type": "array", "description": "How each rule came out.", "items": { "type": "object", "required": ["rule", "met", "notMet", "notApplicable", "undecided"], "properties": { "rule": { "type": "string" }, "met": { "$ref": "#/$defs/tallyCount" }, "notMet": { "$ref": "#/$defs/tallyCount" }, "notApplicable": { "$ref": "#/$defs/tallyCount" }, "undecided": { "$ref": "#/$defs/tallyCount" }, "closest": { "type": "object", "required": ["at", "utilisation", "sense", "measured", "limit"], "properties": { "at": { "$ref": "#/$defs/part" }, "utilisation": { "type": "number" }, "measured": { "type": "string" }, "limit": { "type": "string" }, "sense": { "enum": ["at most", "at least"] } } } } } }, "failures": { "type": "array", "description": "Faults of the tool or of a team's rule, never of the frame.", "items": { "type": "object", "required": ["message"], "properties": { "rule": { "type": "string" }, "fact": { "type": "string" }, "at": { "$ref": "#/$defs/part" }, "message": { "type": "string" } } } }, "assumed": { "type": "array", "items": { "type": "string" } }, "changed": { "type": "array", "description": "Limits that are not at their usual value, and rules not at their own level.", "items": { "type": "object", "required": ["what", "value", "usual", "by", "parts"], "additionalProperties": false, "properties": { "what": { "type": "string", "description": "Name of the criterion, or id of the rule." }, "value": { "type": "string", "description": "In the units of the frame; of a rule a level, or off." }, "usual": { "type": "string" }, "by": { "enum": ["house", "frame", "part"] }, "parts": { "type": "array", "items": { "type": "string" }, "description": "Parts it holds for; none: all." } } } }, "cureTrials": { "type": "object", "required": ["tried", "untried"], "additionalProperties": false, "properties": { "tried": { "$ref": "#/$defs/tallyCount" }, "untried": { "$ref": "#/$defs/tallyCount" } }, "description": "Changed frames inspected in search of cures, and proposals left untried." }, "concessions": { "type": "array", "items": { "type": "string" }, "description": "Concessions that matched nothing, lapsed or ended." } } };
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
  if (!(typeof data == "number" && (!(data % 1) && !isNaN(data)) && isFinite(data))) {
    validate58.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "integer" }, message: "must be integer" }];
    return false;
  }
  if (errors === 0) {
    if (typeof data == "number" && isFinite(data)) {
      if (data < 0 || isNaN(data)) {
        validate58.errors = [{ instancePath, schemaPath: "#/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" }];
        return false;
      }
    }
  }
  validate58.errors = vErrors;
  return errors === 0;
}
validate58.evaluated = { "dynamicProps": false, "dynamicItems": false };
var schema24 = { "type": "object", "required": ["code", "weight", "place", "found", "expected"], "description": "What is wrong with the file itself.", "properties": { "code": { "type": "string" }, "weight": { "enum": ["error", "warning"] }, "place": { "$ref": "#/$defs/place" }, "found": { "type": "string" }, "expected": { "type": "string" }, "mend": { "type": "string" } } };
function validate64(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate64.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.file === void 0 && (missing0 = "file") || data.pointer === void 0 && (missing0 = "pointer") || data.line === void 0 && (missing0 = "line") || data.column === void 0 && (missing0 = "column") || data.endLine === void 0 && (missing0 = "endLine") || data.endColumn === void 0 && (missing0 = "endColumn")) {
        validate64.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        if (data.file !== void 0) {
          const _errs1 = errors;
          if (typeof data.file !== "string") {
            validate64.errors = [{ instancePath: instancePath + "/file", schemaPath: "#/properties/file/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
            return false;
          }
          var valid0 = _errs1 === errors;
        } else {
          var valid0 = true;
        }
        if (valid0) {
          if (data.pointer !== void 0) {
            const _errs3 = errors;
            if (typeof data.pointer !== "string") {
              validate64.errors = [{ instancePath: instancePath + "/pointer", schemaPath: "#/properties/pointer/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
              return false;
            }
            var valid0 = _errs3 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.line !== void 0) {
              let data2 = data.line;
              const _errs5 = errors;
              if (!(typeof data2 == "number" && (!(data2 % 1) && !isNaN(data2)) && isFinite(data2))) {
                validate64.errors = [{ instancePath: instancePath + "/line", schemaPath: "#/properties/line/type", keyword: "type", params: { type: "integer" }, message: "must be integer" }];
                return false;
              }
              if (errors === _errs5) {
                if (typeof data2 == "number" && isFinite(data2)) {
                  if (data2 < 1 || isNaN(data2)) {
                    validate64.errors = [{ instancePath: instancePath + "/line", schemaPath: "#/properties/line/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" }];
                    return false;
                  }
                }
              }
              var valid0 = _errs5 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.column !== void 0) {
                let data3 = data.column;
                const _errs7 = errors;
                if (!(typeof data3 == "number" && (!(data3 % 1) && !isNaN(data3)) && isFinite(data3))) {
                  validate64.errors = [{ instancePath: instancePath + "/column", schemaPath: "#/properties/column/type", keyword: "type", params: { type: "integer" }, message: "must be integer" }];
                  return false;
                }
                if (errors === _errs7) {
                  if (typeof data3 == "number" && isFinite(data3)) {
                    if (data3 < 1 || isNaN(data3)) {
                      validate64.errors = [{ instancePath: instancePath + "/column", schemaPath: "#/properties/column/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" }];
                      return false;
                    }
                  }
                }
                var valid0 = _errs7 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.endLine !== void 0) {
                  let data4 = data.endLine;
                  const _errs9 = errors;
                  if (!(typeof data4 == "number" && (!(data4 % 1) && !isNaN(data4)) && isFinite(data4))) {
                    validate64.errors = [{ instancePath: instancePath + "/endLine", schemaPath: "#/properties/endLine/type", keyword: "type", params: { type: "integer" }, message: "must be integer" }];
                    return false;
                  }
                  if (errors === _errs9) {
                    if (typeof data4 == "number" && isFinite(data4)) {
                      if (data4 < 1 || isNaN(data4)) {
                        validate64.errors = [{ instancePath: instancePath + "/endLine", schemaPath: "#/properties/endLine/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" }];
                        return false;
                      }
                    }
                  }
                  var valid0 = _errs9 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.endColumn !== void 0) {
                    let data5 = data.endColumn;
                    const _errs11 = errors;
                    if (!(typeof data5 == "number" && (!(data5 % 1) && !isNaN(data5)) && isFinite(data5))) {
                      validate64.errors = [{ instancePath: instancePath + "/endColumn", schemaPath: "#/properties/endColumn/type", keyword: "type", params: { type: "integer" }, message: "must be integer" }];
                      return false;
                    }
                    if (errors === _errs11) {
                      if (typeof data5 == "number" && isFinite(data5)) {
                        if (data5 < 1 || isNaN(data5)) {
                          validate64.errors = [{ instancePath: instancePath + "/endColumn", schemaPath: "#/properties/endColumn/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" }];
                          return false;
                        }
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
    } else {
      validate64.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate64.errors = vErrors;
  return errors === 0;
}
validate64.evaluated = { "props": { "file": true, "pointer": true, "line": true, "column": true, "endLine": true, "endColumn": true }, "dynamicProps": false, "dynamicItems": false };
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
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.code === void 0 && (missing0 = "code") || data.weight === void 0 && (missing0 = "weight") || data.place === void 0 && (missing0 = "place") || data.found === void 0 && (missing0 = "found") || data.expected === void 0 && (missing0 = "expected")) {
        validate63.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        if (data.code !== void 0) {
          const _errs1 = errors;
          if (typeof data.code !== "string") {
            validate63.errors = [{ instancePath: instancePath + "/code", schemaPath: "#/properties/code/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
            return false;
          }
          var valid0 = _errs1 === errors;
        } else {
          var valid0 = true;
        }
        if (valid0) {
          if (data.weight !== void 0) {
            let data1 = data.weight;
            const _errs3 = errors;
            if (!(data1 === "error" || data1 === "warning")) {
              validate63.errors = [{ instancePath: instancePath + "/weight", schemaPath: "#/properties/weight/enum", keyword: "enum", params: { allowedValues: schema24.properties.weight.enum }, message: "must be equal to one of the allowed values" }];
              return false;
            }
            var valid0 = _errs3 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.place !== void 0) {
              const _errs4 = errors;
              if (!validate64(data.place, { instancePath: instancePath + "/place", parentData: data, parentDataProperty: "place", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate64.errors : vErrors.concat(validate64.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs4 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.found !== void 0) {
                const _errs5 = errors;
                if (typeof data.found !== "string") {
                  validate63.errors = [{ instancePath: instancePath + "/found", schemaPath: "#/properties/found/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                  return false;
                }
                var valid0 = _errs5 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.expected !== void 0) {
                  const _errs7 = errors;
                  if (typeof data.expected !== "string") {
                    validate63.errors = [{ instancePath: instancePath + "/expected", schemaPath: "#/properties/expected/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                    return false;
                  }
                  var valid0 = _errs7 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.mend !== void 0) {
                    const _errs9 = errors;
                    if (typeof data.mend !== "string") {
                      validate63.errors = [{ instancePath: instancePath + "/mend", schemaPath: "#/properties/mend/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
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
        }
      }
    } else {
      validate63.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate63.errors = vErrors;
  return errors === 0;
}
validate63.evaluated = { "props": { "code": true, "weight": true, "place": true, "found": true, "expected": true, "mend": true }, "dynamicProps": false, "dynamicItems": false };
function validate69(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate69.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.kind === void 0 && (missing0 = "kind") || data.id === void 0 && (missing0 = "id")) {
        validate69.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        if (data.kind !== void 0) {
          const _errs1 = errors;
          if (typeof data.kind !== "string") {
            validate69.errors = [{ instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
            return false;
          }
          var valid0 = _errs1 === errors;
        } else {
          var valid0 = true;
        }
        if (valid0) {
          if (data.id !== void 0) {
            const _errs3 = errors;
            if (typeof data.id !== "string") {
              validate69.errors = [{ instancePath: instancePath + "/id", schemaPath: "#/properties/id/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
              return false;
            }
            var valid0 = _errs3 === errors;
          } else {
            var valid0 = true;
          }
        }
      }
    } else {
      validate69.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate69.errors = vErrors;
  return errors === 0;
}
validate69.evaluated = { "props": { "kind": true, "id": true }, "dynamicProps": false, "dynamicItems": false };
var schema28 = { "type": "object", "required": ["quantity", "measured", "limit", "sense", "shown", "from", "basis", "hangsOnStiffness"], "properties": { "quantity": { "type": "string" }, "measured": { "type": "number", "description": "SI." }, "limit": { "type": "number", "description": "SI." }, "sense": { "enum": ["at most", "at least"] }, "shown": { "type": "object", "required": ["measured", "limit"], "properties": { "measured": { "type": "string" }, "limit": { "type": "string" } } }, "from": { "$ref": "#/$defs/sourceOfLimit" }, "basis": { "type": "string" }, "utilisation": { "type": "number", "description": "Demand over capacity; absent where the limit is zero." }, "under": { "type": "object", "required": ["combination", "bound"], "properties": { "combination": { "type": "string" }, "bound": { "$ref": "#/$defs/bound" } } }, "otherBounds": { "type": "object", "additionalProperties": { "type": "string" } }, "hangsOnStiffness": { "type": "boolean" }, "working": { "type": "object", "required": ["formula"], "additionalProperties": false, "properties": { "formula": { "type": "string" }, "figures": { "type": "string" } }, "description": "How the value comes about: in symbols, and with figures in the units of the frame, which give it." }, "soundAbove": { "type": "object", "required": ["stiffness", "shown"], "additionalProperties": false, "properties": { "stiffness": { "type": "number", "description": "N\xB7m/rad." }, "shown": { "type": "string" } }, "description": "Joint stiffness from which the limit is kept, as that of a plain bracket of 40 mm pitch." } } };
var schema29 = { "enum": ["default", "stock", "house", "frame", "part", "computed"] };
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
  if (!(data === "default" || data === "stock" || data === "house" || data === "frame" || data === "part" || data === "computed")) {
    validate74.errors = [{ instancePath, schemaPath: "#/enum", keyword: "enum", params: { allowedValues: schema29.enum }, message: "must be equal to one of the allowed values" }];
    return false;
  }
  validate74.errors = vErrors;
  return errors === 0;
}
validate74.evaluated = { "dynamicProps": false, "dynamicItems": false };
var schema30 = { "enum": ["tested", "soft", "typical", "stiff"], "description": "Assumed joint stiffness; tested where a test backs it." };
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
  if (!(data === "tested" || data === "soft" || data === "typical" || data === "stiff")) {
    validate76.errors = [{ instancePath, schemaPath: "#/enum", keyword: "enum", params: { allowedValues: schema30.enum }, message: "must be equal to one of the allowed values" }];
    return false;
  }
  validate76.errors = vErrors;
  return errors === 0;
}
validate76.evaluated = { "dynamicProps": false, "dynamicItems": false };
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
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.quantity === void 0 && (missing0 = "quantity") || data.measured === void 0 && (missing0 = "measured") || data.limit === void 0 && (missing0 = "limit") || data.sense === void 0 && (missing0 = "sense") || data.shown === void 0 && (missing0 = "shown") || data.from === void 0 && (missing0 = "from") || data.basis === void 0 && (missing0 = "basis") || data.hangsOnStiffness === void 0 && (missing0 = "hangsOnStiffness")) {
        validate73.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        if (data.quantity !== void 0) {
          const _errs1 = errors;
          if (typeof data.quantity !== "string") {
            validate73.errors = [{ instancePath: instancePath + "/quantity", schemaPath: "#/properties/quantity/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
            return false;
          }
          var valid0 = _errs1 === errors;
        } else {
          var valid0 = true;
        }
        if (valid0) {
          if (data.measured !== void 0) {
            let data1 = data.measured;
            const _errs3 = errors;
            if (!(typeof data1 == "number" && isFinite(data1))) {
              validate73.errors = [{ instancePath: instancePath + "/measured", schemaPath: "#/properties/measured/type", keyword: "type", params: { type: "number" }, message: "must be number" }];
              return false;
            }
            var valid0 = _errs3 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.limit !== void 0) {
              let data2 = data.limit;
              const _errs5 = errors;
              if (!(typeof data2 == "number" && isFinite(data2))) {
                validate73.errors = [{ instancePath: instancePath + "/limit", schemaPath: "#/properties/limit/type", keyword: "type", params: { type: "number" }, message: "must be number" }];
                return false;
              }
              var valid0 = _errs5 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.sense !== void 0) {
                let data3 = data.sense;
                const _errs7 = errors;
                if (!(data3 === "at most" || data3 === "at least")) {
                  validate73.errors = [{ instancePath: instancePath + "/sense", schemaPath: "#/properties/sense/enum", keyword: "enum", params: { allowedValues: schema28.properties.sense.enum }, message: "must be equal to one of the allowed values" }];
                  return false;
                }
                var valid0 = _errs7 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.shown !== void 0) {
                  let data4 = data.shown;
                  const _errs8 = errors;
                  if (errors === _errs8) {
                    if (data4 && typeof data4 == "object" && !Array.isArray(data4)) {
                      let missing1;
                      if (data4.measured === void 0 && (missing1 = "measured") || data4.limit === void 0 && (missing1 = "limit")) {
                        validate73.errors = [{ instancePath: instancePath + "/shown", schemaPath: "#/properties/shown/required", keyword: "required", params: { missingProperty: missing1 }, message: "must have required property '" + missing1 + "'" }];
                        return false;
                      } else {
                        if (data4.measured !== void 0) {
                          const _errs10 = errors;
                          if (typeof data4.measured !== "string") {
                            validate73.errors = [{ instancePath: instancePath + "/shown/measured", schemaPath: "#/properties/shown/properties/measured/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                            return false;
                          }
                          var valid1 = _errs10 === errors;
                        } else {
                          var valid1 = true;
                        }
                        if (valid1) {
                          if (data4.limit !== void 0) {
                            const _errs12 = errors;
                            if (typeof data4.limit !== "string") {
                              validate73.errors = [{ instancePath: instancePath + "/shown/limit", schemaPath: "#/properties/shown/properties/limit/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                              return false;
                            }
                            var valid1 = _errs12 === errors;
                          } else {
                            var valid1 = true;
                          }
                        }
                      }
                    } else {
                      validate73.errors = [{ instancePath: instancePath + "/shown", schemaPath: "#/properties/shown/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                      return false;
                    }
                  }
                  var valid0 = _errs8 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.from !== void 0) {
                    const _errs14 = errors;
                    if (!validate74(data.from, { instancePath: instancePath + "/from", parentData: data, parentDataProperty: "from", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
                      errors = vErrors.length;
                    }
                    var valid0 = _errs14 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.basis !== void 0) {
                      const _errs15 = errors;
                      if (typeof data.basis !== "string") {
                        validate73.errors = [{ instancePath: instancePath + "/basis", schemaPath: "#/properties/basis/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                        return false;
                      }
                      var valid0 = _errs15 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.utilisation !== void 0) {
                        let data9 = data.utilisation;
                        const _errs17 = errors;
                        if (!(typeof data9 == "number" && isFinite(data9))) {
                          validate73.errors = [{ instancePath: instancePath + "/utilisation", schemaPath: "#/properties/utilisation/type", keyword: "type", params: { type: "number" }, message: "must be number" }];
                          return false;
                        }
                        var valid0 = _errs17 === errors;
                      } else {
                        var valid0 = true;
                      }
                      if (valid0) {
                        if (data.under !== void 0) {
                          let data10 = data.under;
                          const _errs19 = errors;
                          if (errors === _errs19) {
                            if (data10 && typeof data10 == "object" && !Array.isArray(data10)) {
                              let missing2;
                              if (data10.combination === void 0 && (missing2 = "combination") || data10.bound === void 0 && (missing2 = "bound")) {
                                validate73.errors = [{ instancePath: instancePath + "/under", schemaPath: "#/properties/under/required", keyword: "required", params: { missingProperty: missing2 }, message: "must have required property '" + missing2 + "'" }];
                                return false;
                              } else {
                                if (data10.combination !== void 0) {
                                  const _errs21 = errors;
                                  if (typeof data10.combination !== "string") {
                                    validate73.errors = [{ instancePath: instancePath + "/under/combination", schemaPath: "#/properties/under/properties/combination/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                    return false;
                                  }
                                  var valid2 = _errs21 === errors;
                                } else {
                                  var valid2 = true;
                                }
                                if (valid2) {
                                  if (data10.bound !== void 0) {
                                    const _errs23 = errors;
                                    if (!validate76(data10.bound, { instancePath: instancePath + "/under/bound", parentData: data10, parentDataProperty: "bound", rootData, dynamicAnchors })) {
                                      vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors);
                                      errors = vErrors.length;
                                    }
                                    var valid2 = _errs23 === errors;
                                  } else {
                                    var valid2 = true;
                                  }
                                }
                              }
                            } else {
                              validate73.errors = [{ instancePath: instancePath + "/under", schemaPath: "#/properties/under/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                              return false;
                            }
                          }
                          var valid0 = _errs19 === errors;
                        } else {
                          var valid0 = true;
                        }
                        if (valid0) {
                          if (data.otherBounds !== void 0) {
                            let data13 = data.otherBounds;
                            const _errs24 = errors;
                            if (errors === _errs24) {
                              if (data13 && typeof data13 == "object" && !Array.isArray(data13)) {
                                for (const key0 in data13) {
                                  const _errs27 = errors;
                                  if (typeof data13[key0] !== "string") {
                                    validate73.errors = [{ instancePath: instancePath + "/otherBounds/" + key0.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/otherBounds/additionalProperties/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                    return false;
                                  }
                                  var valid3 = _errs27 === errors;
                                  if (!valid3) {
                                    break;
                                  }
                                }
                              } else {
                                validate73.errors = [{ instancePath: instancePath + "/otherBounds", schemaPath: "#/properties/otherBounds/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                                return false;
                              }
                            }
                            var valid0 = _errs24 === errors;
                          } else {
                            var valid0 = true;
                          }
                          if (valid0) {
                            if (data.hangsOnStiffness !== void 0) {
                              const _errs29 = errors;
                              if (typeof data.hangsOnStiffness !== "boolean") {
                                validate73.errors = [{ instancePath: instancePath + "/hangsOnStiffness", schemaPath: "#/properties/hangsOnStiffness/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" }];
                                return false;
                              }
                              var valid0 = _errs29 === errors;
                            } else {
                              var valid0 = true;
                            }
                            if (valid0) {
                              if (data.working !== void 0) {
                                let data16 = data.working;
                                const _errs31 = errors;
                                if (errors === _errs31) {
                                  if (data16 && typeof data16 == "object" && !Array.isArray(data16)) {
                                    let missing3;
                                    if (data16.formula === void 0 && (missing3 = "formula")) {
                                      validate73.errors = [{ instancePath: instancePath + "/working", schemaPath: "#/properties/working/required", keyword: "required", params: { missingProperty: missing3 }, message: "must have required property '" + missing3 + "'" }];
                                      return false;
                                    } else {
                                      const _errs33 = errors;
                                      for (const key1 in data16) {
                                        if (!(key1 === "formula" || key1 === "figures")) {
                                          validate73.errors = [{ instancePath: instancePath + "/working", schemaPath: "#/properties/working/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties" }];
                                          return false;
                                          break;
                                        }
                                      }
                                      if (_errs33 === errors) {
                                        if (data16.formula !== void 0) {
                                          const _errs34 = errors;
                                          if (typeof data16.formula !== "string") {
                                            validate73.errors = [{ instancePath: instancePath + "/working/formula", schemaPath: "#/properties/working/properties/formula/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                            return false;
                                          }
                                          var valid4 = _errs34 === errors;
                                        } else {
                                          var valid4 = true;
                                        }
                                        if (valid4) {
                                          if (data16.figures !== void 0) {
                                            const _errs36 = errors;
                                            if (typeof data16.figures !== "string") {
                                              validate73.errors = [{ instancePath: instancePath + "/working/figures", schemaPath: "#/properties/working/properties/figures/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                              return false;
                                            }
                                            var valid4 = _errs36 === errors;
                                          } else {
                                            var valid4 = true;
                                          }
                                        }
                                      }
                                    }
                                  } else {
                                    validate73.errors = [{ instancePath: instancePath + "/working", schemaPath: "#/properties/working/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                                    return false;
                                  }
                                }
                                var valid0 = _errs31 === errors;
                              } else {
                                var valid0 = true;
                              }
                              if (valid0) {
                                if (data.soundAbove !== void 0) {
                                  let data19 = data.soundAbove;
                                  const _errs38 = errors;
                                  if (errors === _errs38) {
                                    if (data19 && typeof data19 == "object" && !Array.isArray(data19)) {
                                      let missing4;
                                      if (data19.stiffness === void 0 && (missing4 = "stiffness") || data19.shown === void 0 && (missing4 = "shown")) {
                                        validate73.errors = [{ instancePath: instancePath + "/soundAbove", schemaPath: "#/properties/soundAbove/required", keyword: "required", params: { missingProperty: missing4 }, message: "must have required property '" + missing4 + "'" }];
                                        return false;
                                      } else {
                                        const _errs40 = errors;
                                        for (const key2 in data19) {
                                          if (!(key2 === "stiffness" || key2 === "shown")) {
                                            validate73.errors = [{ instancePath: instancePath + "/soundAbove", schemaPath: "#/properties/soundAbove/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key2 }, message: "must NOT have additional properties" }];
                                            return false;
                                            break;
                                          }
                                        }
                                        if (_errs40 === errors) {
                                          if (data19.stiffness !== void 0) {
                                            let data20 = data19.stiffness;
                                            const _errs41 = errors;
                                            if (!(typeof data20 == "number" && isFinite(data20))) {
                                              validate73.errors = [{ instancePath: instancePath + "/soundAbove/stiffness", schemaPath: "#/properties/soundAbove/properties/stiffness/type", keyword: "type", params: { type: "number" }, message: "must be number" }];
                                              return false;
                                            }
                                            var valid5 = _errs41 === errors;
                                          } else {
                                            var valid5 = true;
                                          }
                                          if (valid5) {
                                            if (data19.shown !== void 0) {
                                              const _errs43 = errors;
                                              if (typeof data19.shown !== "string") {
                                                validate73.errors = [{ instancePath: instancePath + "/soundAbove/shown", schemaPath: "#/properties/soundAbove/properties/shown/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                                return false;
                                              }
                                              var valid5 = _errs43 === errors;
                                            } else {
                                              var valid5 = true;
                                            }
                                          }
                                        }
                                      }
                                    } else {
                                      validate73.errors = [{ instancePath: instancePath + "/soundAbove", schemaPath: "#/properties/soundAbove/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                                      return false;
                                    }
                                  }
                                  var valid0 = _errs38 === errors;
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
      validate73.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate73.errors = vErrors;
  return errors === 0;
}
validate73.evaluated = { "props": { "quantity": true, "measured": true, "limit": true, "sense": true, "shown": true, "from": true, "basis": true, "utilisation": true, "under": true, "otherBounds": true, "hangsOnStiffness": true, "working": true, "soundAbove": true }, "dynamicProps": false, "dynamicItems": false };
function validate80(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate80.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = void 0;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = void 0;
  }
  if (errors === 0) {
    if (data && typeof data == "object" && !Array.isArray(data)) {
      let missing0;
      if (data.words === void 0 && (missing0 = "words") || data.edits === void 0 && (missing0 = "edits")) {
        validate80.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        if (data.words !== void 0) {
          const _errs1 = errors;
          if (typeof data.words !== "string") {
            validate80.errors = [{ instancePath: instancePath + "/words", schemaPath: "#/properties/words/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
            return false;
          }
          var valid0 = _errs1 === errors;
        } else {
          var valid0 = true;
        }
        if (valid0) {
          if (data.edits !== void 0) {
            let data1 = data.edits;
            const _errs3 = errors;
            if (errors === _errs3) {
              if (Array.isArray(data1)) {
                var valid1 = true;
                const len0 = data1.length;
                for (let i0 = 0; i0 < len0; i0++) {
                  let data2 = data1[i0];
                  const _errs5 = errors;
                  if (errors === _errs5) {
                    if (data2 && typeof data2 == "object" && !Array.isArray(data2)) {
                      let missing1;
                      if (data2.pointer === void 0 && (missing1 = "pointer") || data2.to === void 0 && (missing1 = "to")) {
                        validate80.errors = [{ instancePath: instancePath + "/edits/" + i0, schemaPath: "#/properties/edits/items/required", keyword: "required", params: { missingProperty: missing1 }, message: "must have required property '" + missing1 + "'" }];
                        return false;
                      } else {
                        if (data2.pointer !== void 0) {
                          if (typeof data2.pointer !== "string") {
                            validate80.errors = [{ instancePath: instancePath + "/edits/" + i0 + "/pointer", schemaPath: "#/properties/edits/items/properties/pointer/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                            return false;
                          }
                        }
                      }
                    } else {
                      validate80.errors = [{ instancePath: instancePath + "/edits/" + i0, schemaPath: "#/properties/edits/items/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                      return false;
                    }
                  }
                  var valid1 = _errs5 === errors;
                  if (!valid1) {
                    break;
                  }
                }
              } else {
                validate80.errors = [{ instancePath: instancePath + "/edits", schemaPath: "#/properties/edits/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                return false;
              }
            }
            var valid0 = _errs3 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.after !== void 0) {
              const _errs9 = errors;
              if (typeof data.after !== "string") {
                validate80.errors = [{ instancePath: instancePath + "/after", schemaPath: "#/properties/after/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                return false;
              }
              var valid0 = _errs9 === errors;
            } else {
              var valid0 = true;
            }
          }
        }
      }
    } else {
      validate80.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate80.errors = vErrors;
  return errors === 0;
}
validate80.evaluated = { "props": { "words": true, "edits": true, "after": true }, "dynamicProps": false, "dynamicItems": false };
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
      let missing0;
      if (data.rule === void 0 && (missing0 = "rule") || data.message === void 0 && (missing0 = "message") || data.level === void 0 && (missing0 = "level") || data.at === void 0 && (missing0 = "at") || data.where === void 0 && (missing0 = "where") || data.text === void 0 && (missing0 = "text") || data.shown === void 0 && (missing0 = "shown") || data.related === void 0 && (missing0 = "related") || data.place === void 0 && (missing0 = "place") || data.fingerprint === void 0 && (missing0 = "fingerprint") || data.cures === void 0 && (missing0 = "cures")) {
        validate67.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        if (data.rule !== void 0) {
          const _errs1 = errors;
          if (typeof data.rule !== "string") {
            validate67.errors = [{ instancePath: instancePath + "/rule", schemaPath: "#/properties/rule/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
            return false;
          }
          var valid0 = _errs1 === errors;
        } else {
          var valid0 = true;
        }
        if (valid0) {
          if (data.message !== void 0) {
            const _errs3 = errors;
            if (typeof data.message !== "string") {
              validate67.errors = [{ instancePath: instancePath + "/message", schemaPath: "#/properties/message/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
              return false;
            }
            var valid0 = _errs3 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.level !== void 0) {
              const _errs5 = errors;
              if (!validate54(data.level, { instancePath: instancePath + "/level", parentData: data, parentDataProperty: "level", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
                errors = vErrors.length;
              }
              var valid0 = _errs5 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.at !== void 0) {
                const _errs6 = errors;
                if (!validate69(data.at, { instancePath: instancePath + "/at", parentData: data, parentDataProperty: "at", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate69.errors : vErrors.concat(validate69.errors);
                  errors = vErrors.length;
                }
                var valid0 = _errs6 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.where !== void 0) {
                  const _errs7 = errors;
                  if (typeof data.where !== "string") {
                    validate67.errors = [{ instancePath: instancePath + "/where", schemaPath: "#/properties/where/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                    return false;
                  }
                  var valid0 = _errs7 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.text !== void 0) {
                    const _errs9 = errors;
                    if (typeof data.text !== "string") {
                      validate67.errors = [{ instancePath: instancePath + "/text", schemaPath: "#/properties/text/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                      return false;
                    }
                    var valid0 = _errs9 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.shown !== void 0) {
                      let data6 = data.shown;
                      const _errs11 = errors;
                      if (errors === _errs11) {
                        if (data6 && typeof data6 == "object" && !Array.isArray(data6)) {
                          for (const key0 in data6) {
                            const _errs14 = errors;
                            if (typeof data6[key0] !== "string") {
                              validate67.errors = [{ instancePath: instancePath + "/shown/" + key0.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/shown/additionalProperties/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                              return false;
                            }
                            var valid1 = _errs14 === errors;
                            if (!valid1) {
                              break;
                            }
                          }
                        } else {
                          validate67.errors = [{ instancePath: instancePath + "/shown", schemaPath: "#/properties/shown/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                          return false;
                        }
                      }
                      var valid0 = _errs11 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.related !== void 0) {
                        let data8 = data.related;
                        const _errs16 = errors;
                        if (errors === _errs16) {
                          if (Array.isArray(data8)) {
                            var valid2 = true;
                            const len0 = data8.length;
                            for (let i0 = 0; i0 < len0; i0++) {
                              let data9 = data8[i0];
                              const _errs18 = errors;
                              if (errors === _errs18) {
                                if (data9 && typeof data9 == "object" && !Array.isArray(data9)) {
                                  let missing1;
                                  if (data9.at === void 0 && (missing1 = "at") || data9.place === void 0 && (missing1 = "place")) {
                                    validate67.errors = [{ instancePath: instancePath + "/related/" + i0, schemaPath: "#/properties/related/items/required", keyword: "required", params: { missingProperty: missing1 }, message: "must have required property '" + missing1 + "'" }];
                                    return false;
                                  } else {
                                    if (data9.at !== void 0) {
                                      const _errs20 = errors;
                                      if (!validate69(data9.at, { instancePath: instancePath + "/related/" + i0 + "/at", parentData: data9, parentDataProperty: "at", rootData, dynamicAnchors })) {
                                        vErrors = vErrors === null ? validate69.errors : vErrors.concat(validate69.errors);
                                        errors = vErrors.length;
                                      }
                                      var valid3 = _errs20 === errors;
                                    } else {
                                      var valid3 = true;
                                    }
                                    if (valid3) {
                                      if (data9.place !== void 0) {
                                        const _errs21 = errors;
                                        if (!validate64(data9.place, { instancePath: instancePath + "/related/" + i0 + "/place", parentData: data9, parentDataProperty: "place", rootData, dynamicAnchors })) {
                                          vErrors = vErrors === null ? validate64.errors : vErrors.concat(validate64.errors);
                                          errors = vErrors.length;
                                        }
                                        var valid3 = _errs21 === errors;
                                      } else {
                                        var valid3 = true;
                                      }
                                    }
                                  }
                                } else {
                                  validate67.errors = [{ instancePath: instancePath + "/related/" + i0, schemaPath: "#/properties/related/items/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                                  return false;
                                }
                              }
                              var valid2 = _errs18 === errors;
                              if (!valid2) {
                                break;
                              }
                            }
                          } else {
                            validate67.errors = [{ instancePath: instancePath + "/related", schemaPath: "#/properties/related/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                            return false;
                          }
                        }
                        var valid0 = _errs16 === errors;
                      } else {
                        var valid0 = true;
                      }
                      if (valid0) {
                        if (data.advice !== void 0) {
                          const _errs22 = errors;
                          if (typeof data.advice !== "string") {
                            validate67.errors = [{ instancePath: instancePath + "/advice", schemaPath: "#/properties/advice/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                            return false;
                          }
                          var valid0 = _errs22 === errors;
                        } else {
                          var valid0 = true;
                        }
                        if (valid0) {
                          if (data.measure !== void 0) {
                            const _errs24 = errors;
                            if (!validate73(data.measure, { instancePath: instancePath + "/measure", parentData: data, parentDataProperty: "measure", rootData, dynamicAnchors })) {
                              vErrors = vErrors === null ? validate73.errors : vErrors.concat(validate73.errors);
                              errors = vErrors.length;
                            }
                            var valid0 = _errs24 === errors;
                          } else {
                            var valid0 = true;
                          }
                          if (valid0) {
                            if (data.place !== void 0) {
                              const _errs25 = errors;
                              if (!validate64(data.place, { instancePath: instancePath + "/place", parentData: data, parentDataProperty: "place", rootData, dynamicAnchors })) {
                                vErrors = vErrors === null ? validate64.errors : vErrors.concat(validate64.errors);
                                errors = vErrors.length;
                              }
                              var valid0 = _errs25 === errors;
                            } else {
                              var valid0 = true;
                            }
                            if (valid0) {
                              if (data.fingerprint !== void 0) {
                                const _errs26 = errors;
                                if (typeof data.fingerprint !== "string") {
                                  validate67.errors = [{ instancePath: instancePath + "/fingerprint", schemaPath: "#/properties/fingerprint/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                  return false;
                                }
                                var valid0 = _errs26 === errors;
                              } else {
                                var valid0 = true;
                              }
                              if (valid0) {
                                if (data.conceded !== void 0) {
                                  let data16 = data.conceded;
                                  const _errs28 = errors;
                                  if (errors === _errs28) {
                                    if (data16 && typeof data16 == "object" && !Array.isArray(data16)) {
                                      let missing2;
                                      if (data16.reason === void 0 && (missing2 = "reason") || data16.who === void 0 && (missing2 = "who") || data16.until === void 0 && (missing2 = "until")) {
                                        validate67.errors = [{ instancePath: instancePath + "/conceded", schemaPath: "#/properties/conceded/required", keyword: "required", params: { missingProperty: missing2 }, message: "must have required property '" + missing2 + "'" }];
                                        return false;
                                      } else {
                                        if (data16.reason !== void 0) {
                                          const _errs30 = errors;
                                          if (typeof data16.reason !== "string") {
                                            validate67.errors = [{ instancePath: instancePath + "/conceded/reason", schemaPath: "#/properties/conceded/properties/reason/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                            return false;
                                          }
                                          var valid4 = _errs30 === errors;
                                        } else {
                                          var valid4 = true;
                                        }
                                        if (valid4) {
                                          if (data16.who !== void 0) {
                                            const _errs32 = errors;
                                            if (typeof data16.who !== "string") {
                                              validate67.errors = [{ instancePath: instancePath + "/conceded/who", schemaPath: "#/properties/conceded/properties/who/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                              return false;
                                            }
                                            var valid4 = _errs32 === errors;
                                          } else {
                                            var valid4 = true;
                                          }
                                          if (valid4) {
                                            if (data16.until !== void 0) {
                                              const _errs34 = errors;
                                              if (typeof data16.until !== "string") {
                                                validate67.errors = [{ instancePath: instancePath + "/conceded/until", schemaPath: "#/properties/conceded/properties/until/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                                return false;
                                              }
                                              var valid4 = _errs34 === errors;
                                            } else {
                                              var valid4 = true;
                                            }
                                          }
                                        }
                                      }
                                    } else {
                                      validate67.errors = [{ instancePath: instancePath + "/conceded", schemaPath: "#/properties/conceded/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                                      return false;
                                    }
                                  }
                                  var valid0 = _errs28 === errors;
                                } else {
                                  var valid0 = true;
                                }
                                if (valid0) {
                                  if (data.cures !== void 0) {
                                    let data20 = data.cures;
                                    const _errs36 = errors;
                                    if (errors === _errs36) {
                                      if (Array.isArray(data20)) {
                                        var valid5 = true;
                                        const len1 = data20.length;
                                        for (let i1 = 0; i1 < len1; i1++) {
                                          const _errs38 = errors;
                                          if (!validate80(data20[i1], { instancePath: instancePath + "/cures/" + i1, parentData: data20, parentDataProperty: i1, rootData, dynamicAnchors })) {
                                            vErrors = vErrors === null ? validate80.errors : vErrors.concat(validate80.errors);
                                            errors = vErrors.length;
                                          }
                                          var valid5 = _errs38 === errors;
                                          if (!valid5) {
                                            break;
                                          }
                                        }
                                      } else {
                                        validate67.errors = [{ instancePath: instancePath + "/cures", schemaPath: "#/properties/cures/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                        return false;
                                      }
                                    }
                                    var valid0 = _errs36 === errors;
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
      validate67.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate67.errors = vErrors;
  return errors === 0;
}
validate67.evaluated = { "props": { "rule": true, "message": true, "level": true, "at": true, "where": true, "text": true, "shown": true, "related": true, "advice": true, "measure": true, "place": true, "fingerprint": true, "conceded": true, "cures": true }, "dynamicProps": false, "dynamicItems": false };
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
      let missing0;
      if (data.file === void 0 && (missing0 = "file") || data.title === void 0 && (missing0 = "title") || data.units === void 0 && (missing0 = "units") || data.verdict === void 0 && (missing0 = "verdict") || data.complete === void 0 && (missing0 = "complete") || data.counts === void 0 && (missing0 = "counts") || data.problems === void 0 && (missing0 = "problems") || data.findings === void 0 && (missing0 = "findings") || data.undecided === void 0 && (missing0 = "undecided") || data.rules === void 0 && (missing0 = "rules") || data.failures === void 0 && (missing0 = "failures") || data.assumed === void 0 && (missing0 = "assumed") || data.changed === void 0 && (missing0 = "changed") || data.concessions === void 0 && (missing0 = "concessions") || data.cureTrials === void 0 && (missing0 = "cureTrials")) {
        validate57.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        if (data.file !== void 0) {
          const _errs1 = errors;
          if (typeof data.file !== "string") {
            validate57.errors = [{ instancePath: instancePath + "/file", schemaPath: "#/properties/file/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
            return false;
          }
          var valid0 = _errs1 === errors;
        } else {
          var valid0 = true;
        }
        if (valid0) {
          if (data.title !== void 0) {
            const _errs3 = errors;
            if (typeof data.title !== "string") {
              validate57.errors = [{ instancePath: instancePath + "/title", schemaPath: "#/properties/title/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
              return false;
            }
            var valid0 = _errs3 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.revision !== void 0) {
              const _errs5 = errors;
              if (typeof data.revision !== "string") {
                validate57.errors = [{ instancePath: instancePath + "/revision", schemaPath: "#/properties/revision/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                return false;
              }
              var valid0 = _errs5 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.units !== void 0) {
                let data3 = data.units;
                const _errs7 = errors;
                if (!(data3 === "mm-N-kg" || data3 === "in-lbf-lb")) {
                  validate57.errors = [{ instancePath: instancePath + "/units", schemaPath: "#/properties/units/enum", keyword: "enum", params: { allowedValues: schema22.properties.units.enum }, message: "must be equal to one of the allowed values" }];
                  return false;
                }
                var valid0 = _errs7 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.verdict !== void 0) {
                  let data4 = data.verdict;
                  const _errs8 = errors;
                  if (!(data4 === "accept" || data4 === "hold" || data4 === "reject" || data4 === "unread")) {
                    validate57.errors = [{ instancePath: instancePath + "/verdict", schemaPath: "#/properties/verdict/enum", keyword: "enum", params: { allowedValues: schema22.properties.verdict.enum }, message: "must be equal to one of the allowed values" }];
                    return false;
                  }
                  var valid0 = _errs8 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.complete !== void 0) {
                    const _errs9 = errors;
                    if (typeof data.complete !== "boolean") {
                      validate57.errors = [{ instancePath: instancePath + "/complete", schemaPath: "#/properties/complete/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" }];
                      return false;
                    }
                    var valid0 = _errs9 === errors;
                  } else {
                    var valid0 = true;
                  }
                  if (valid0) {
                    if (data.counts !== void 0) {
                      let data6 = data.counts;
                      const _errs11 = errors;
                      if (errors === _errs11) {
                        if (data6 && typeof data6 == "object" && !Array.isArray(data6)) {
                          let missing1;
                          if (data6.bars === void 0 && (missing1 = "bars") || data6.joints === void 0 && (missing1 = "joints") || data6.cases === void 0 && (missing1 = "cases") || data6.parts === void 0 && (missing1 = "parts")) {
                            validate57.errors = [{ instancePath: instancePath + "/counts", schemaPath: "#/properties/counts/required", keyword: "required", params: { missingProperty: missing1 }, message: "must have required property '" + missing1 + "'" }];
                            return false;
                          } else {
                            if (data6.bars !== void 0) {
                              const _errs13 = errors;
                              if (!validate58(data6.bars, { instancePath: instancePath + "/counts/bars", parentData: data6, parentDataProperty: "bars", rootData, dynamicAnchors })) {
                                vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
                                errors = vErrors.length;
                              }
                              var valid1 = _errs13 === errors;
                            } else {
                              var valid1 = true;
                            }
                            if (valid1) {
                              if (data6.joints !== void 0) {
                                const _errs14 = errors;
                                if (!validate58(data6.joints, { instancePath: instancePath + "/counts/joints", parentData: data6, parentDataProperty: "joints", rootData, dynamicAnchors })) {
                                  vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
                                  errors = vErrors.length;
                                }
                                var valid1 = _errs14 === errors;
                              } else {
                                var valid1 = true;
                              }
                              if (valid1) {
                                if (data6.cases !== void 0) {
                                  const _errs15 = errors;
                                  if (!validate58(data6.cases, { instancePath: instancePath + "/counts/cases", parentData: data6, parentDataProperty: "cases", rootData, dynamicAnchors })) {
                                    vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
                                    errors = vErrors.length;
                                  }
                                  var valid1 = _errs15 === errors;
                                } else {
                                  var valid1 = true;
                                }
                                if (valid1) {
                                  if (data6.parts !== void 0) {
                                    const _errs16 = errors;
                                    if (!validate58(data6.parts, { instancePath: instancePath + "/counts/parts", parentData: data6, parentDataProperty: "parts", rootData, dynamicAnchors })) {
                                      vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
                                      errors = vErrors.length;
                                    }
                                    var valid1 = _errs16 === errors;
                                  } else {
                                    var valid1 = true;
                                  }
                                }
                              }
                            }
                          }
                        } else {
                          validate57.errors = [{ instancePath: instancePath + "/counts", schemaPath: "#/properties/counts/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                          return false;
                        }
                      }
                      var valid0 = _errs11 === errors;
                    } else {
                      var valid0 = true;
                    }
                    if (valid0) {
                      if (data.problems !== void 0) {
                        let data11 = data.problems;
                        const _errs17 = errors;
                        if (errors === _errs17) {
                          if (Array.isArray(data11)) {
                            var valid2 = true;
                            const len0 = data11.length;
                            for (let i0 = 0; i0 < len0; i0++) {
                              const _errs19 = errors;
                              if (!validate63(data11[i0], { instancePath: instancePath + "/problems/" + i0, parentData: data11, parentDataProperty: i0, rootData, dynamicAnchors })) {
                                vErrors = vErrors === null ? validate63.errors : vErrors.concat(validate63.errors);
                                errors = vErrors.length;
                              }
                              var valid2 = _errs19 === errors;
                              if (!valid2) {
                                break;
                              }
                            }
                          } else {
                            validate57.errors = [{ instancePath: instancePath + "/problems", schemaPath: "#/properties/problems/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                            return false;
                          }
                        }
                        var valid0 = _errs17 === errors;
                      } else {
                        var valid0 = true;
                      }
                      if (valid0) {
                        if (data.findings !== void 0) {
                          let data13 = data.findings;
                          const _errs20 = errors;
                          if (errors === _errs20) {
                            if (Array.isArray(data13)) {
                              var valid3 = true;
                              const len1 = data13.length;
                              for (let i1 = 0; i1 < len1; i1++) {
                                const _errs22 = errors;
                                if (!validate67(data13[i1], { instancePath: instancePath + "/findings/" + i1, parentData: data13, parentDataProperty: i1, rootData, dynamicAnchors })) {
                                  vErrors = vErrors === null ? validate67.errors : vErrors.concat(validate67.errors);
                                  errors = vErrors.length;
                                }
                                var valid3 = _errs22 === errors;
                                if (!valid3) {
                                  break;
                                }
                              }
                            } else {
                              validate57.errors = [{ instancePath: instancePath + "/findings", schemaPath: "#/properties/findings/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                              return false;
                            }
                          }
                          var valid0 = _errs20 === errors;
                        } else {
                          var valid0 = true;
                        }
                        if (valid0) {
                          if (data.undecided !== void 0) {
                            let data15 = data.undecided;
                            const _errs23 = errors;
                            if (errors === _errs23) {
                              if (Array.isArray(data15)) {
                                var valid4 = true;
                                const len2 = data15.length;
                                for (let i2 = 0; i2 < len2; i2++) {
                                  let data16 = data15[i2];
                                  const _errs25 = errors;
                                  if (errors === _errs25) {
                                    if (data16 && typeof data16 == "object" && !Array.isArray(data16)) {
                                      let missing2;
                                      if (data16.why === void 0 && (missing2 = "why") || data16.rules === void 0 && (missing2 = "rules") || data16.at === void 0 && (missing2 = "at") || data16.holds === void 0 && (missing2 = "holds")) {
                                        validate57.errors = [{ instancePath: instancePath + "/undecided/" + i2, schemaPath: "#/properties/undecided/items/required", keyword: "required", params: { missingProperty: missing2 }, message: "must have required property '" + missing2 + "'" }];
                                        return false;
                                      } else {
                                        if (data16.why !== void 0) {
                                          const _errs27 = errors;
                                          if (typeof data16.why !== "string") {
                                            validate57.errors = [{ instancePath: instancePath + "/undecided/" + i2 + "/why", schemaPath: "#/properties/undecided/items/properties/why/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                            return false;
                                          }
                                          var valid5 = _errs27 === errors;
                                        } else {
                                          var valid5 = true;
                                        }
                                        if (valid5) {
                                          if (data16.rules !== void 0) {
                                            let data18 = data16.rules;
                                            const _errs29 = errors;
                                            if (errors === _errs29) {
                                              if (Array.isArray(data18)) {
                                                var valid6 = true;
                                                const len3 = data18.length;
                                                for (let i3 = 0; i3 < len3; i3++) {
                                                  const _errs31 = errors;
                                                  if (typeof data18[i3] !== "string") {
                                                    validate57.errors = [{ instancePath: instancePath + "/undecided/" + i2 + "/rules/" + i3, schemaPath: "#/properties/undecided/items/properties/rules/items/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                                    return false;
                                                  }
                                                  var valid6 = _errs31 === errors;
                                                  if (!valid6) {
                                                    break;
                                                  }
                                                }
                                              } else {
                                                validate57.errors = [{ instancePath: instancePath + "/undecided/" + i2 + "/rules", schemaPath: "#/properties/undecided/items/properties/rules/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                                return false;
                                              }
                                            }
                                            var valid5 = _errs29 === errors;
                                          } else {
                                            var valid5 = true;
                                          }
                                          if (valid5) {
                                            if (data16.at !== void 0) {
                                              let data20 = data16.at;
                                              const _errs33 = errors;
                                              if (errors === _errs33) {
                                                if (Array.isArray(data20)) {
                                                  var valid7 = true;
                                                  const len4 = data20.length;
                                                  for (let i4 = 0; i4 < len4; i4++) {
                                                    const _errs35 = errors;
                                                    if (!validate69(data20[i4], { instancePath: instancePath + "/undecided/" + i2 + "/at/" + i4, parentData: data20, parentDataProperty: i4, rootData, dynamicAnchors })) {
                                                      vErrors = vErrors === null ? validate69.errors : vErrors.concat(validate69.errors);
                                                      errors = vErrors.length;
                                                    }
                                                    var valid7 = _errs35 === errors;
                                                    if (!valid7) {
                                                      break;
                                                    }
                                                  }
                                                } else {
                                                  validate57.errors = [{ instancePath: instancePath + "/undecided/" + i2 + "/at", schemaPath: "#/properties/undecided/items/properties/at/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                                  return false;
                                                }
                                              }
                                              var valid5 = _errs33 === errors;
                                            } else {
                                              var valid5 = true;
                                            }
                                            if (valid5) {
                                              if (data16.holds !== void 0) {
                                                const _errs36 = errors;
                                                if (typeof data16.holds !== "boolean") {
                                                  validate57.errors = [{ instancePath: instancePath + "/undecided/" + i2 + "/holds", schemaPath: "#/properties/undecided/items/properties/holds/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" }];
                                                  return false;
                                                }
                                                var valid5 = _errs36 === errors;
                                              } else {
                                                var valid5 = true;
                                              }
                                            }
                                          }
                                        }
                                      }
                                    } else {
                                      validate57.errors = [{ instancePath: instancePath + "/undecided/" + i2, schemaPath: "#/properties/undecided/items/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                                      return false;
                                    }
                                  }
                                  var valid4 = _errs25 === errors;
                                  if (!valid4) {
                                    break;
                                  }
                                }
                              } else {
                                validate57.errors = [{ instancePath: instancePath + "/undecided", schemaPath: "#/properties/undecided/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                return false;
                              }
                            }
                            var valid0 = _errs23 === errors;
                          } else {
                            var valid0 = true;
                          }
                          if (valid0) {
                            if (data.rules !== void 0) {
                              let data23 = data.rules;
                              const _errs38 = errors;
                              if (errors === _errs38) {
                                if (Array.isArray(data23)) {
                                  var valid8 = true;
                                  const len5 = data23.length;
                                  for (let i5 = 0; i5 < len5; i5++) {
                                    let data24 = data23[i5];
                                    const _errs40 = errors;
                                    if (errors === _errs40) {
                                      if (data24 && typeof data24 == "object" && !Array.isArray(data24)) {
                                        let missing3;
                                        if (data24.rule === void 0 && (missing3 = "rule") || data24.met === void 0 && (missing3 = "met") || data24.notMet === void 0 && (missing3 = "notMet") || data24.notApplicable === void 0 && (missing3 = "notApplicable") || data24.undecided === void 0 && (missing3 = "undecided")) {
                                          validate57.errors = [{ instancePath: instancePath + "/rules/" + i5, schemaPath: "#/properties/rules/items/required", keyword: "required", params: { missingProperty: missing3 }, message: "must have required property '" + missing3 + "'" }];
                                          return false;
                                        } else {
                                          if (data24.rule !== void 0) {
                                            const _errs42 = errors;
                                            if (typeof data24.rule !== "string") {
                                              validate57.errors = [{ instancePath: instancePath + "/rules/" + i5 + "/rule", schemaPath: "#/properties/rules/items/properties/rule/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                              return false;
                                            }
                                            var valid9 = _errs42 === errors;
                                          } else {
                                            var valid9 = true;
                                          }
                                          if (valid9) {
                                            if (data24.met !== void 0) {
                                              const _errs44 = errors;
                                              if (!validate58(data24.met, { instancePath: instancePath + "/rules/" + i5 + "/met", parentData: data24, parentDataProperty: "met", rootData, dynamicAnchors })) {
                                                vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
                                                errors = vErrors.length;
                                              }
                                              var valid9 = _errs44 === errors;
                                            } else {
                                              var valid9 = true;
                                            }
                                            if (valid9) {
                                              if (data24.notMet !== void 0) {
                                                const _errs45 = errors;
                                                if (!validate58(data24.notMet, { instancePath: instancePath + "/rules/" + i5 + "/notMet", parentData: data24, parentDataProperty: "notMet", rootData, dynamicAnchors })) {
                                                  vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
                                                  errors = vErrors.length;
                                                }
                                                var valid9 = _errs45 === errors;
                                              } else {
                                                var valid9 = true;
                                              }
                                              if (valid9) {
                                                if (data24.notApplicable !== void 0) {
                                                  const _errs46 = errors;
                                                  if (!validate58(data24.notApplicable, { instancePath: instancePath + "/rules/" + i5 + "/notApplicable", parentData: data24, parentDataProperty: "notApplicable", rootData, dynamicAnchors })) {
                                                    vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
                                                    errors = vErrors.length;
                                                  }
                                                  var valid9 = _errs46 === errors;
                                                } else {
                                                  var valid9 = true;
                                                }
                                                if (valid9) {
                                                  if (data24.undecided !== void 0) {
                                                    const _errs47 = errors;
                                                    if (!validate58(data24.undecided, { instancePath: instancePath + "/rules/" + i5 + "/undecided", parentData: data24, parentDataProperty: "undecided", rootData, dynamicAnchors })) {
                                                      vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
                                                      errors = vErrors.length;
                                                    }
                                                    var valid9 = _errs47 === errors;
                                                  } else {
                                                    var valid9 = true;
                                                  }
                                                  if (valid9) {
                                                    if (data24.closest !== void 0) {
                                                      let data30 = data24.closest;
                                                      const _errs48 = errors;
                                                      if (errors === _errs48) {
                                                        if (data30 && typeof data30 == "object" && !Array.isArray(data30)) {
                                                          let missing4;
                                                          if (data30.at === void 0 && (missing4 = "at") || data30.utilisation === void 0 && (missing4 = "utilisation") || data30.sense === void 0 && (missing4 = "sense") || data30.measured === void 0 && (missing4 = "measured") || data30.limit === void 0 && (missing4 = "limit")) {
                                                            validate57.errors = [{ instancePath: instancePath + "/rules/" + i5 + "/closest", schemaPath: "#/properties/rules/items/properties/closest/required", keyword: "required", params: { missingProperty: missing4 }, message: "must have required property '" + missing4 + "'" }];
                                                            return false;
                                                          } else {
                                                            if (data30.at !== void 0) {
                                                              const _errs50 = errors;
                                                              if (!validate69(data30.at, { instancePath: instancePath + "/rules/" + i5 + "/closest/at", parentData: data30, parentDataProperty: "at", rootData, dynamicAnchors })) {
                                                                vErrors = vErrors === null ? validate69.errors : vErrors.concat(validate69.errors);
                                                                errors = vErrors.length;
                                                              }
                                                              var valid10 = _errs50 === errors;
                                                            } else {
                                                              var valid10 = true;
                                                            }
                                                            if (valid10) {
                                                              if (data30.utilisation !== void 0) {
                                                                let data32 = data30.utilisation;
                                                                const _errs51 = errors;
                                                                if (!(typeof data32 == "number" && isFinite(data32))) {
                                                                  validate57.errors = [{ instancePath: instancePath + "/rules/" + i5 + "/closest/utilisation", schemaPath: "#/properties/rules/items/properties/closest/properties/utilisation/type", keyword: "type", params: { type: "number" }, message: "must be number" }];
                                                                  return false;
                                                                }
                                                                var valid10 = _errs51 === errors;
                                                              } else {
                                                                var valid10 = true;
                                                              }
                                                              if (valid10) {
                                                                if (data30.measured !== void 0) {
                                                                  const _errs53 = errors;
                                                                  if (typeof data30.measured !== "string") {
                                                                    validate57.errors = [{ instancePath: instancePath + "/rules/" + i5 + "/closest/measured", schemaPath: "#/properties/rules/items/properties/closest/properties/measured/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                                                    return false;
                                                                  }
                                                                  var valid10 = _errs53 === errors;
                                                                } else {
                                                                  var valid10 = true;
                                                                }
                                                                if (valid10) {
                                                                  if (data30.limit !== void 0) {
                                                                    const _errs55 = errors;
                                                                    if (typeof data30.limit !== "string") {
                                                                      validate57.errors = [{ instancePath: instancePath + "/rules/" + i5 + "/closest/limit", schemaPath: "#/properties/rules/items/properties/closest/properties/limit/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                                                      return false;
                                                                    }
                                                                    var valid10 = _errs55 === errors;
                                                                  } else {
                                                                    var valid10 = true;
                                                                  }
                                                                  if (valid10) {
                                                                    if (data30.sense !== void 0) {
                                                                      let data35 = data30.sense;
                                                                      const _errs57 = errors;
                                                                      if (!(data35 === "at most" || data35 === "at least")) {
                                                                        validate57.errors = [{ instancePath: instancePath + "/rules/" + i5 + "/closest/sense", schemaPath: "#/properties/rules/items/properties/closest/properties/sense/enum", keyword: "enum", params: { allowedValues: schema22.properties.rules.items.properties.closest.properties.sense.enum }, message: "must be equal to one of the allowed values" }];
                                                                        return false;
                                                                      }
                                                                      var valid10 = _errs57 === errors;
                                                                    } else {
                                                                      var valid10 = true;
                                                                    }
                                                                  }
                                                                }
                                                              }
                                                            }
                                                          }
                                                        } else {
                                                          validate57.errors = [{ instancePath: instancePath + "/rules/" + i5 + "/closest", schemaPath: "#/properties/rules/items/properties/closest/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                                                          return false;
                                                        }
                                                      }
                                                      var valid9 = _errs48 === errors;
                                                    } else {
                                                      var valid9 = true;
                                                    }
                                                  }
                                                }
                                              }
                                            }
                                          }
                                        }
                                      } else {
                                        validate57.errors = [{ instancePath: instancePath + "/rules/" + i5, schemaPath: "#/properties/rules/items/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                                        return false;
                                      }
                                    }
                                    var valid8 = _errs40 === errors;
                                    if (!valid8) {
                                      break;
                                    }
                                  }
                                } else {
                                  validate57.errors = [{ instancePath: instancePath + "/rules", schemaPath: "#/properties/rules/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                  return false;
                                }
                              }
                              var valid0 = _errs38 === errors;
                            } else {
                              var valid0 = true;
                            }
                            if (valid0) {
                              if (data.failures !== void 0) {
                                let data36 = data.failures;
                                const _errs58 = errors;
                                if (errors === _errs58) {
                                  if (Array.isArray(data36)) {
                                    var valid11 = true;
                                    const len6 = data36.length;
                                    for (let i6 = 0; i6 < len6; i6++) {
                                      let data37 = data36[i6];
                                      const _errs60 = errors;
                                      if (errors === _errs60) {
                                        if (data37 && typeof data37 == "object" && !Array.isArray(data37)) {
                                          let missing5;
                                          if (data37.message === void 0 && (missing5 = "message")) {
                                            validate57.errors = [{ instancePath: instancePath + "/failures/" + i6, schemaPath: "#/properties/failures/items/required", keyword: "required", params: { missingProperty: missing5 }, message: "must have required property '" + missing5 + "'" }];
                                            return false;
                                          } else {
                                            if (data37.rule !== void 0) {
                                              const _errs62 = errors;
                                              if (typeof data37.rule !== "string") {
                                                validate57.errors = [{ instancePath: instancePath + "/failures/" + i6 + "/rule", schemaPath: "#/properties/failures/items/properties/rule/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                                return false;
                                              }
                                              var valid12 = _errs62 === errors;
                                            } else {
                                              var valid12 = true;
                                            }
                                            if (valid12) {
                                              if (data37.fact !== void 0) {
                                                const _errs64 = errors;
                                                if (typeof data37.fact !== "string") {
                                                  validate57.errors = [{ instancePath: instancePath + "/failures/" + i6 + "/fact", schemaPath: "#/properties/failures/items/properties/fact/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                                  return false;
                                                }
                                                var valid12 = _errs64 === errors;
                                              } else {
                                                var valid12 = true;
                                              }
                                              if (valid12) {
                                                if (data37.at !== void 0) {
                                                  const _errs66 = errors;
                                                  if (!validate69(data37.at, { instancePath: instancePath + "/failures/" + i6 + "/at", parentData: data37, parentDataProperty: "at", rootData, dynamicAnchors })) {
                                                    vErrors = vErrors === null ? validate69.errors : vErrors.concat(validate69.errors);
                                                    errors = vErrors.length;
                                                  }
                                                  var valid12 = _errs66 === errors;
                                                } else {
                                                  var valid12 = true;
                                                }
                                                if (valid12) {
                                                  if (data37.message !== void 0) {
                                                    const _errs67 = errors;
                                                    if (typeof data37.message !== "string") {
                                                      validate57.errors = [{ instancePath: instancePath + "/failures/" + i6 + "/message", schemaPath: "#/properties/failures/items/properties/message/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                                      return false;
                                                    }
                                                    var valid12 = _errs67 === errors;
                                                  } else {
                                                    var valid12 = true;
                                                  }
                                                }
                                              }
                                            }
                                          }
                                        } else {
                                          validate57.errors = [{ instancePath: instancePath + "/failures/" + i6, schemaPath: "#/properties/failures/items/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                                          return false;
                                        }
                                      }
                                      var valid11 = _errs60 === errors;
                                      if (!valid11) {
                                        break;
                                      }
                                    }
                                  } else {
                                    validate57.errors = [{ instancePath: instancePath + "/failures", schemaPath: "#/properties/failures/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                    return false;
                                  }
                                }
                                var valid0 = _errs58 === errors;
                              } else {
                                var valid0 = true;
                              }
                              if (valid0) {
                                if (data.assumed !== void 0) {
                                  let data42 = data.assumed;
                                  const _errs69 = errors;
                                  if (errors === _errs69) {
                                    if (Array.isArray(data42)) {
                                      var valid13 = true;
                                      const len7 = data42.length;
                                      for (let i7 = 0; i7 < len7; i7++) {
                                        const _errs71 = errors;
                                        if (typeof data42[i7] !== "string") {
                                          validate57.errors = [{ instancePath: instancePath + "/assumed/" + i7, schemaPath: "#/properties/assumed/items/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                          return false;
                                        }
                                        var valid13 = _errs71 === errors;
                                        if (!valid13) {
                                          break;
                                        }
                                      }
                                    } else {
                                      validate57.errors = [{ instancePath: instancePath + "/assumed", schemaPath: "#/properties/assumed/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                      return false;
                                    }
                                  }
                                  var valid0 = _errs69 === errors;
                                } else {
                                  var valid0 = true;
                                }
                                if (valid0) {
                                  if (data.changed !== void 0) {
                                    let data44 = data.changed;
                                    const _errs73 = errors;
                                    if (errors === _errs73) {
                                      if (Array.isArray(data44)) {
                                        var valid14 = true;
                                        const len8 = data44.length;
                                        for (let i8 = 0; i8 < len8; i8++) {
                                          let data45 = data44[i8];
                                          const _errs75 = errors;
                                          if (errors === _errs75) {
                                            if (data45 && typeof data45 == "object" && !Array.isArray(data45)) {
                                              let missing6;
                                              if (data45.what === void 0 && (missing6 = "what") || data45.value === void 0 && (missing6 = "value") || data45.usual === void 0 && (missing6 = "usual") || data45.by === void 0 && (missing6 = "by") || data45.parts === void 0 && (missing6 = "parts")) {
                                                validate57.errors = [{ instancePath: instancePath + "/changed/" + i8, schemaPath: "#/properties/changed/items/required", keyword: "required", params: { missingProperty: missing6 }, message: "must have required property '" + missing6 + "'" }];
                                                return false;
                                              } else {
                                                const _errs77 = errors;
                                                for (const key0 in data45) {
                                                  if (!(key0 === "what" || key0 === "value" || key0 === "usual" || key0 === "by" || key0 === "parts")) {
                                                    validate57.errors = [{ instancePath: instancePath + "/changed/" + i8, schemaPath: "#/properties/changed/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" }];
                                                    return false;
                                                    break;
                                                  }
                                                }
                                                if (_errs77 === errors) {
                                                  if (data45.what !== void 0) {
                                                    const _errs78 = errors;
                                                    if (typeof data45.what !== "string") {
                                                      validate57.errors = [{ instancePath: instancePath + "/changed/" + i8 + "/what", schemaPath: "#/properties/changed/items/properties/what/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                                      return false;
                                                    }
                                                    var valid15 = _errs78 === errors;
                                                  } else {
                                                    var valid15 = true;
                                                  }
                                                  if (valid15) {
                                                    if (data45.value !== void 0) {
                                                      const _errs80 = errors;
                                                      if (typeof data45.value !== "string") {
                                                        validate57.errors = [{ instancePath: instancePath + "/changed/" + i8 + "/value", schemaPath: "#/properties/changed/items/properties/value/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                                        return false;
                                                      }
                                                      var valid15 = _errs80 === errors;
                                                    } else {
                                                      var valid15 = true;
                                                    }
                                                    if (valid15) {
                                                      if (data45.usual !== void 0) {
                                                        const _errs82 = errors;
                                                        if (typeof data45.usual !== "string") {
                                                          validate57.errors = [{ instancePath: instancePath + "/changed/" + i8 + "/usual", schemaPath: "#/properties/changed/items/properties/usual/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                                          return false;
                                                        }
                                                        var valid15 = _errs82 === errors;
                                                      } else {
                                                        var valid15 = true;
                                                      }
                                                      if (valid15) {
                                                        if (data45.by !== void 0) {
                                                          let data49 = data45.by;
                                                          const _errs84 = errors;
                                                          if (!(data49 === "house" || data49 === "frame" || data49 === "part")) {
                                                            validate57.errors = [{ instancePath: instancePath + "/changed/" + i8 + "/by", schemaPath: "#/properties/changed/items/properties/by/enum", keyword: "enum", params: { allowedValues: schema22.properties.changed.items.properties.by.enum }, message: "must be equal to one of the allowed values" }];
                                                            return false;
                                                          }
                                                          var valid15 = _errs84 === errors;
                                                        } else {
                                                          var valid15 = true;
                                                        }
                                                        if (valid15) {
                                                          if (data45.parts !== void 0) {
                                                            let data50 = data45.parts;
                                                            const _errs85 = errors;
                                                            if (errors === _errs85) {
                                                              if (Array.isArray(data50)) {
                                                                var valid16 = true;
                                                                const len9 = data50.length;
                                                                for (let i9 = 0; i9 < len9; i9++) {
                                                                  const _errs87 = errors;
                                                                  if (typeof data50[i9] !== "string") {
                                                                    validate57.errors = [{ instancePath: instancePath + "/changed/" + i8 + "/parts/" + i9, schemaPath: "#/properties/changed/items/properties/parts/items/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                                                    return false;
                                                                  }
                                                                  var valid16 = _errs87 === errors;
                                                                  if (!valid16) {
                                                                    break;
                                                                  }
                                                                }
                                                              } else {
                                                                validate57.errors = [{ instancePath: instancePath + "/changed/" + i8 + "/parts", schemaPath: "#/properties/changed/items/properties/parts/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                                                return false;
                                                              }
                                                            }
                                                            var valid15 = _errs85 === errors;
                                                          } else {
                                                            var valid15 = true;
                                                          }
                                                        }
                                                      }
                                                    }
                                                  }
                                                }
                                              }
                                            } else {
                                              validate57.errors = [{ instancePath: instancePath + "/changed/" + i8, schemaPath: "#/properties/changed/items/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                                              return false;
                                            }
                                          }
                                          var valid14 = _errs75 === errors;
                                          if (!valid14) {
                                            break;
                                          }
                                        }
                                      } else {
                                        validate57.errors = [{ instancePath: instancePath + "/changed", schemaPath: "#/properties/changed/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                        return false;
                                      }
                                    }
                                    var valid0 = _errs73 === errors;
                                  } else {
                                    var valid0 = true;
                                  }
                                  if (valid0) {
                                    if (data.cureTrials !== void 0) {
                                      let data52 = data.cureTrials;
                                      const _errs89 = errors;
                                      if (errors === _errs89) {
                                        if (data52 && typeof data52 == "object" && !Array.isArray(data52)) {
                                          let missing7;
                                          if (data52.tried === void 0 && (missing7 = "tried") || data52.untried === void 0 && (missing7 = "untried")) {
                                            validate57.errors = [{ instancePath: instancePath + "/cureTrials", schemaPath: "#/properties/cureTrials/required", keyword: "required", params: { missingProperty: missing7 }, message: "must have required property '" + missing7 + "'" }];
                                            return false;
                                          } else {
                                            const _errs91 = errors;
                                            for (const key1 in data52) {
                                              if (!(key1 === "tried" || key1 === "untried")) {
                                                validate57.errors = [{ instancePath: instancePath + "/cureTrials", schemaPath: "#/properties/cureTrials/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties" }];
                                                return false;
                                                break;
                                              }
                                            }
                                            if (_errs91 === errors) {
                                              if (data52.tried !== void 0) {
                                                const _errs92 = errors;
                                                if (!validate58(data52.tried, { instancePath: instancePath + "/cureTrials/tried", parentData: data52, parentDataProperty: "tried", rootData, dynamicAnchors })) {
                                                  vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
                                                  errors = vErrors.length;
                                                }
                                                var valid17 = _errs92 === errors;
                                              } else {
                                                var valid17 = true;
                                              }
                                              if (valid17) {
                                                if (data52.untried !== void 0) {
                                                  const _errs93 = errors;
                                                  if (!validate58(data52.untried, { instancePath: instancePath + "/cureTrials/untried", parentData: data52, parentDataProperty: "untried", rootData, dynamicAnchors })) {
                                                    vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
                                                    errors = vErrors.length;
                                                  }
                                                  var valid17 = _errs93 === errors;
                                                } else {
                                                  var valid17 = true;
                                                }
                                              }
                                            }
                                          }
                                        } else {
                                          validate57.errors = [{ instancePath: instancePath + "/cureTrials", schemaPath: "#/properties/cureTrials/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                                          return false;
                                        }
                                      }
                                      var valid0 = _errs89 === errors;
                                    } else {
                                      var valid0 = true;
                                    }
                                    if (valid0) {
                                      if (data.concessions !== void 0) {
                                        let data55 = data.concessions;
                                        const _errs94 = errors;
                                        if (errors === _errs94) {
                                          if (Array.isArray(data55)) {
                                            var valid18 = true;
                                            const len10 = data55.length;
                                            for (let i10 = 0; i10 < len10; i10++) {
                                              const _errs96 = errors;
                                              if (typeof data55[i10] !== "string") {
                                                validate57.errors = [{ instancePath: instancePath + "/concessions/" + i10, schemaPath: "#/properties/concessions/items/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                                                return false;
                                              }
                                              var valid18 = _errs96 === errors;
                                              if (!valid18) {
                                                break;
                                              }
                                            }
                                          } else {
                                            validate57.errors = [{ instancePath: instancePath + "/concessions", schemaPath: "#/properties/concessions/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                                            return false;
                                          }
                                        }
                                        var valid0 = _errs94 === errors;
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
      validate57.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate57.errors = vErrors;
  return errors === 0;
}
validate57.evaluated = { "props": { "file": true, "title": true, "revision": true, "units": true, "verdict": true, "complete": true, "counts": true, "problems": true, "findings": true, "undecided": true, "rules": true, "failures": true, "assumed": true, "changed": true, "cureTrials": true, "concessions": true }, "dynamicProps": false, "dynamicItems": false };
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
      if (data.formatVersion === void 0 && (missing0 = "formatVersion") || data.tool === void 0 && (missing0 = "tool") || data.faults === void 0 && (missing0 = "faults") || data.rules === void 0 && (missing0 = "rules") || data.frames === void 0 && (missing0 = "frames") || data.total === void 0 && (missing0 = "total")) {
        validate52.errors = [{ instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: missing0 }, message: "must have required property '" + missing0 + "'" }];
        return false;
      } else {
        if (data.formatVersion !== void 0) {
          let data0 = data.formatVersion;
          const _errs1 = errors;
          if (errors === _errs1) {
            if (typeof data0 === "string") {
              if (!pattern3.test(data0)) {
                validate52.errors = [{ instancePath: instancePath + "/formatVersion", schemaPath: "#/properties/formatVersion/pattern", keyword: "pattern", params: { pattern: "^1\\.[0-9]+$" }, message: 'must match pattern "^1\\.[0-9]+$"' }];
                return false;
              }
            } else {
              validate52.errors = [{ instancePath: instancePath + "/formatVersion", schemaPath: "#/properties/formatVersion/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
              return false;
            }
          }
          var valid0 = _errs1 === errors;
        } else {
          var valid0 = true;
        }
        if (valid0) {
          if (data.tool !== void 0) {
            let data1 = data.tool;
            const _errs3 = errors;
            if (errors === _errs3) {
              if (data1 && typeof data1 == "object" && !Array.isArray(data1)) {
                let missing1;
                if (data1.name === void 0 && (missing1 = "name") || data1.version === void 0 && (missing1 = "version")) {
                  validate52.errors = [{ instancePath: instancePath + "/tool", schemaPath: "#/properties/tool/required", keyword: "required", params: { missingProperty: missing1 }, message: "must have required property '" + missing1 + "'" }];
                  return false;
                } else {
                  if (data1.name !== void 0) {
                    const _errs5 = errors;
                    if ("trysquare" !== data1.name) {
                      validate52.errors = [{ instancePath: instancePath + "/tool/name", schemaPath: "#/properties/tool/properties/name/const", keyword: "const", params: { allowedValue: "trysquare" }, message: "must be equal to constant" }];
                      return false;
                    }
                    var valid1 = _errs5 === errors;
                  } else {
                    var valid1 = true;
                  }
                  if (valid1) {
                    if (data1.version !== void 0) {
                      const _errs6 = errors;
                      if (typeof data1.version !== "string") {
                        validate52.errors = [{ instancePath: instancePath + "/tool/version", schemaPath: "#/properties/tool/properties/version/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                        return false;
                      }
                      var valid1 = _errs6 === errors;
                    } else {
                      var valid1 = true;
                    }
                  }
                }
              } else {
                validate52.errors = [{ instancePath: instancePath + "/tool", schemaPath: "#/properties/tool/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                return false;
              }
            }
            var valid0 = _errs3 === errors;
          } else {
            var valid0 = true;
          }
          if (valid0) {
            if (data.faults !== void 0) {
              let data4 = data.faults;
              const _errs8 = errors;
              if (errors === _errs8) {
                if (Array.isArray(data4)) {
                  var valid2 = true;
                  const len0 = data4.length;
                  for (let i0 = 0; i0 < len0; i0++) {
                    const _errs10 = errors;
                    if (typeof data4[i0] !== "string") {
                      validate52.errors = [{ instancePath: instancePath + "/faults/" + i0, schemaPath: "#/properties/faults/items/type", keyword: "type", params: { type: "string" }, message: "must be string" }];
                      return false;
                    }
                    var valid2 = _errs10 === errors;
                    if (!valid2) {
                      break;
                    }
                  }
                } else {
                  validate52.errors = [{ instancePath: instancePath + "/faults", schemaPath: "#/properties/faults/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                  return false;
                }
              }
              var valid0 = _errs8 === errors;
            } else {
              var valid0 = true;
            }
            if (valid0) {
              if (data.rules !== void 0) {
                let data6 = data.rules;
                const _errs12 = errors;
                if (errors === _errs12) {
                  if (Array.isArray(data6)) {
                    var valid3 = true;
                    const len1 = data6.length;
                    for (let i1 = 0; i1 < len1; i1++) {
                      const _errs14 = errors;
                      if (!validate53(data6[i1], { instancePath: instancePath + "/rules/" + i1, parentData: data6, parentDataProperty: i1, rootData, dynamicAnchors })) {
                        vErrors = vErrors === null ? validate53.errors : vErrors.concat(validate53.errors);
                        errors = vErrors.length;
                      }
                      var valid3 = _errs14 === errors;
                      if (!valid3) {
                        break;
                      }
                    }
                  } else {
                    validate52.errors = [{ instancePath: instancePath + "/rules", schemaPath: "#/properties/rules/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                    return false;
                  }
                }
                var valid0 = _errs12 === errors;
              } else {
                var valid0 = true;
              }
              if (valid0) {
                if (data.frames !== void 0) {
                  let data8 = data.frames;
                  const _errs15 = errors;
                  if (errors === _errs15) {
                    if (Array.isArray(data8)) {
                      var valid4 = true;
                      const len2 = data8.length;
                      for (let i2 = 0; i2 < len2; i2++) {
                        const _errs17 = errors;
                        if (!validate57(data8[i2], { instancePath: instancePath + "/frames/" + i2, parentData: data8, parentDataProperty: i2, rootData, dynamicAnchors })) {
                          vErrors = vErrors === null ? validate57.errors : vErrors.concat(validate57.errors);
                          errors = vErrors.length;
                        }
                        var valid4 = _errs17 === errors;
                        if (!valid4) {
                          break;
                        }
                      }
                    } else {
                      validate52.errors = [{ instancePath: instancePath + "/frames", schemaPath: "#/properties/frames/type", keyword: "type", params: { type: "array" }, message: "must be array" }];
                      return false;
                    }
                  }
                  var valid0 = _errs15 === errors;
                } else {
                  var valid0 = true;
                }
                if (valid0) {
                  if (data.total !== void 0) {
                    let data10 = data.total;
                    const _errs18 = errors;
                    if (errors === _errs18) {
                      if (data10 && typeof data10 == "object" && !Array.isArray(data10)) {
                        let missing2;
                        if (data10.frames === void 0 && (missing2 = "frames") || data10.findings === void 0 && (missing2 = "findings") || data10.accept === void 0 && (missing2 = "accept") || data10.hold === void 0 && (missing2 = "hold") || data10.reject === void 0 && (missing2 = "reject") || data10.unread === void 0 && (missing2 = "unread")) {
                          validate52.errors = [{ instancePath: instancePath + "/total", schemaPath: "#/properties/total/required", keyword: "required", params: { missingProperty: missing2 }, message: "must have required property '" + missing2 + "'" }];
                          return false;
                        } else {
                          if (data10.frames !== void 0) {
                            const _errs20 = errors;
                            if (!validate58(data10.frames, { instancePath: instancePath + "/total/frames", parentData: data10, parentDataProperty: "frames", rootData, dynamicAnchors })) {
                              vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
                              errors = vErrors.length;
                            }
                            var valid5 = _errs20 === errors;
                          } else {
                            var valid5 = true;
                          }
                          if (valid5) {
                            if (data10.findings !== void 0) {
                              const _errs21 = errors;
                              if (!validate58(data10.findings, { instancePath: instancePath + "/total/findings", parentData: data10, parentDataProperty: "findings", rootData, dynamicAnchors })) {
                                vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
                                errors = vErrors.length;
                              }
                              var valid5 = _errs21 === errors;
                            } else {
                              var valid5 = true;
                            }
                            if (valid5) {
                              if (data10.accept !== void 0) {
                                const _errs22 = errors;
                                if (!validate58(data10.accept, { instancePath: instancePath + "/total/accept", parentData: data10, parentDataProperty: "accept", rootData, dynamicAnchors })) {
                                  vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
                                  errors = vErrors.length;
                                }
                                var valid5 = _errs22 === errors;
                              } else {
                                var valid5 = true;
                              }
                              if (valid5) {
                                if (data10.hold !== void 0) {
                                  const _errs23 = errors;
                                  if (!validate58(data10.hold, { instancePath: instancePath + "/total/hold", parentData: data10, parentDataProperty: "hold", rootData, dynamicAnchors })) {
                                    vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
                                    errors = vErrors.length;
                                  }
                                  var valid5 = _errs23 === errors;
                                } else {
                                  var valid5 = true;
                                }
                                if (valid5) {
                                  if (data10.reject !== void 0) {
                                    const _errs24 = errors;
                                    if (!validate58(data10.reject, { instancePath: instancePath + "/total/reject", parentData: data10, parentDataProperty: "reject", rootData, dynamicAnchors })) {
                                      vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
                                      errors = vErrors.length;
                                    }
                                    var valid5 = _errs24 === errors;
                                  } else {
                                    var valid5 = true;
                                  }
                                  if (valid5) {
                                    if (data10.unread !== void 0) {
                                      const _errs25 = errors;
                                      if (!validate58(data10.unread, { instancePath: instancePath + "/total/unread", parentData: data10, parentDataProperty: "unread", rootData, dynamicAnchors })) {
                                        vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
                                        errors = vErrors.length;
                                      }
                                      var valid5 = _errs25 === errors;
                                    } else {
                                      var valid5 = true;
                                    }
                                  }
                                }
                              }
                            }
                          }
                        }
                      } else {
                        validate52.errors = [{ instancePath: instancePath + "/total", schemaPath: "#/properties/total/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
                        return false;
                      }
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
    } else {
      validate52.errors = [{ instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" }];
      return false;
    }
  }
  validate52.errors = vErrors;
  return errors === 0;
}
validate52.evaluated = { "props": { "formatVersion": true, "tool": true, "faults": true, "rules": true, "frames": true, "total": true }, "dynamicProps": false, "dynamicItems": false };
export {
  whole
};
