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
    const err0 = { instancePath, schemaPath: "#/enum", keyword: "enum", params: { allowedValues: schema21.enum }, message: "must be equal to one of the allowed values" };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
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
    if (data.title === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "title" }, message: "must have required property 'title'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.group === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "group" }, message: "must have required property 'group'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.level === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "level" }, message: "must have required property 'level'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.basis === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "basis" }, message: "must have required property 'basis'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.messages === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "messages" }, message: "must have required property 'messages'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.criteria === void 0) {
      const err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "criteria" }, message: "must have required property 'criteria'" };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    if (data.id !== void 0) {
      if (typeof data.id !== "string") {
        const err7 = { instancePath: instancePath + "/id", schemaPath: "#/properties/id/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err7];
        } else {
          vErrors.push(err7);
        }
        errors++;
      }
    }
    if (data.title !== void 0) {
      if (typeof data.title !== "string") {
        const err8 = { instancePath: instancePath + "/title", schemaPath: "#/properties/title/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err8];
        } else {
          vErrors.push(err8);
        }
        errors++;
      }
    }
    if (data.group !== void 0) {
      if (typeof data.group !== "string") {
        const err9 = { instancePath: instancePath + "/group", schemaPath: "#/properties/group/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
    }
    if (data.level !== void 0) {
      if (!validate54(data.level, { instancePath: instancePath + "/level", parentData: data, parentDataProperty: "level", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.basis !== void 0) {
      let data4 = data.basis;
      if (Array.isArray(data4)) {
        const len0 = data4.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (typeof data4[i0] !== "string") {
            const err10 = { instancePath: instancePath + "/basis/" + i0, schemaPath: "#/properties/basis/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
            if (vErrors === null) {
              vErrors = [err10];
            } else {
              vErrors.push(err10);
            }
            errors++;
          }
        }
      } else {
        const err11 = { instancePath: instancePath + "/basis", schemaPath: "#/properties/basis/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err11];
        } else {
          vErrors.push(err11);
        }
        errors++;
      }
    }
    if (data.messages !== void 0) {
      let data6 = data.messages;
      if (data6 && typeof data6 == "object" && !Array.isArray(data6)) {
        for (const key0 in data6) {
          let data7 = data6[key0];
          if (data7 && typeof data7 == "object" && !Array.isArray(data7)) {
            if (data7.text === void 0) {
              const err12 = { instancePath: instancePath + "/messages/" + key0.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/messages/additionalProperties/required", keyword: "required", params: { missingProperty: "text" }, message: "must have required property 'text'" };
              if (vErrors === null) {
                vErrors = [err12];
              } else {
                vErrors.push(err12);
              }
              errors++;
            }
            if (data7.text !== void 0) {
              if (typeof data7.text !== "string") {
                const err13 = { instancePath: instancePath + "/messages/" + key0.replace(/~/g, "~0").replace(/\//g, "~1") + "/text", schemaPath: "#/properties/messages/additionalProperties/properties/text/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err13];
                } else {
                  vErrors.push(err13);
                }
                errors++;
              }
            }
            if (data7.advice !== void 0) {
              if (typeof data7.advice !== "string") {
                const err14 = { instancePath: instancePath + "/messages/" + key0.replace(/~/g, "~0").replace(/\//g, "~1") + "/advice", schemaPath: "#/properties/messages/additionalProperties/properties/advice/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err14];
                } else {
                  vErrors.push(err14);
                }
                errors++;
              }
            }
          } else {
            const err15 = { instancePath: instancePath + "/messages/" + key0.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/messages/additionalProperties/type", keyword: "type", params: { type: "object" }, message: "must be object" };
            if (vErrors === null) {
              vErrors = [err15];
            } else {
              vErrors.push(err15);
            }
            errors++;
          }
        }
      } else {
        const err16 = { instancePath: instancePath + "/messages", schemaPath: "#/properties/messages/type", keyword: "type", params: { type: "object" }, message: "must be object" };
        if (vErrors === null) {
          vErrors = [err16];
        } else {
          vErrors.push(err16);
        }
        errors++;
      }
    }
    if (data.criteria !== void 0) {
      let data10 = data.criteria;
      if (Array.isArray(data10)) {
        const len1 = data10.length;
        for (let i1 = 0; i1 < len1; i1++) {
          let data11 = data10[i1];
          if (data11 && typeof data11 == "object" && !Array.isArray(data11)) {
            if (data11.name === void 0) {
              const err17 = { instancePath: instancePath + "/criteria/" + i1, schemaPath: "#/properties/criteria/items/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
              if (vErrors === null) {
                vErrors = [err17];
              } else {
                vErrors.push(err17);
              }
              errors++;
            }
            if (data11.quantity === void 0) {
              const err18 = { instancePath: instancePath + "/criteria/" + i1, schemaPath: "#/properties/criteria/items/required", keyword: "required", params: { missingProperty: "quantity" }, message: "must have required property 'quantity'" };
              if (vErrors === null) {
                vErrors = [err18];
              } else {
                vErrors.push(err18);
              }
              errors++;
            }
            if (data11.standard === void 0) {
              const err19 = { instancePath: instancePath + "/criteria/" + i1, schemaPath: "#/properties/criteria/items/required", keyword: "required", params: { missingProperty: "standard" }, message: "must have required property 'standard'" };
              if (vErrors === null) {
                vErrors = [err19];
              } else {
                vErrors.push(err19);
              }
              errors++;
            }
            if (data11.about === void 0) {
              const err20 = { instancePath: instancePath + "/criteria/" + i1, schemaPath: "#/properties/criteria/items/required", keyword: "required", params: { missingProperty: "about" }, message: "must have required property 'about'" };
              if (vErrors === null) {
                vErrors = [err20];
              } else {
                vErrors.push(err20);
              }
              errors++;
            }
            if (data11.basis === void 0) {
              const err21 = { instancePath: instancePath + "/criteria/" + i1, schemaPath: "#/properties/criteria/items/required", keyword: "required", params: { missingProperty: "basis" }, message: "must have required property 'basis'" };
              if (vErrors === null) {
                vErrors = [err21];
              } else {
                vErrors.push(err21);
              }
              errors++;
            }
            if (data11.name !== void 0) {
              if (typeof data11.name !== "string") {
                const err22 = { instancePath: instancePath + "/criteria/" + i1 + "/name", schemaPath: "#/properties/criteria/items/properties/name/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err22];
                } else {
                  vErrors.push(err22);
                }
                errors++;
              }
            }
            if (data11.quantity !== void 0) {
              if (typeof data11.quantity !== "string") {
                const err23 = { instancePath: instancePath + "/criteria/" + i1 + "/quantity", schemaPath: "#/properties/criteria/items/properties/quantity/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err23];
                } else {
                  vErrors.push(err23);
                }
                errors++;
              }
            }
            if (data11.standard !== void 0) {
              if (typeof data11.standard !== "string") {
                const err24 = { instancePath: instancePath + "/criteria/" + i1 + "/standard", schemaPath: "#/properties/criteria/items/properties/standard/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err24];
                } else {
                  vErrors.push(err24);
                }
                errors++;
              }
            }
            if (data11.within !== void 0) {
              let data15 = data11.within;
              if (Array.isArray(data15)) {
                if (data15.length > 2) {
                  const err25 = { instancePath: instancePath + "/criteria/" + i1 + "/within", schemaPath: "#/properties/criteria/items/properties/within/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
                  if (vErrors === null) {
                    vErrors = [err25];
                  } else {
                    vErrors.push(err25);
                  }
                  errors++;
                }
                if (data15.length < 2) {
                  const err26 = { instancePath: instancePath + "/criteria/" + i1 + "/within", schemaPath: "#/properties/criteria/items/properties/within/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
                  if (vErrors === null) {
                    vErrors = [err26];
                  } else {
                    vErrors.push(err26);
                  }
                  errors++;
                }
                const len2 = data15.length;
                for (let i2 = 0; i2 < len2; i2++) {
                  if (typeof data15[i2] !== "string") {
                    const err27 = { instancePath: instancePath + "/criteria/" + i1 + "/within/" + i2, schemaPath: "#/properties/criteria/items/properties/within/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err27];
                    } else {
                      vErrors.push(err27);
                    }
                    errors++;
                  }
                }
              } else {
                const err28 = { instancePath: instancePath + "/criteria/" + i1 + "/within", schemaPath: "#/properties/criteria/items/properties/within/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                if (vErrors === null) {
                  vErrors = [err28];
                } else {
                  vErrors.push(err28);
                }
                errors++;
              }
            }
            if (data11.about !== void 0) {
              if (typeof data11.about !== "string") {
                const err29 = { instancePath: instancePath + "/criteria/" + i1 + "/about", schemaPath: "#/properties/criteria/items/properties/about/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err29];
                } else {
                  vErrors.push(err29);
                }
                errors++;
              }
            }
            if (data11.basis !== void 0) {
              if (typeof data11.basis !== "string") {
                const err30 = { instancePath: instancePath + "/criteria/" + i1 + "/basis", schemaPath: "#/properties/criteria/items/properties/basis/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err30];
                } else {
                  vErrors.push(err30);
                }
                errors++;
              }
            }
          } else {
            const err31 = { instancePath: instancePath + "/criteria/" + i1, schemaPath: "#/properties/criteria/items/type", keyword: "type", params: { type: "object" }, message: "must be object" };
            if (vErrors === null) {
              vErrors = [err31];
            } else {
              vErrors.push(err31);
            }
            errors++;
          }
        }
      } else {
        const err32 = { instancePath: instancePath + "/criteria", schemaPath: "#/properties/criteria/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err32];
        } else {
          vErrors.push(err32);
        }
        errors++;
      }
    }
  } else {
    const err33 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err33];
    } else {
      vErrors.push(err33);
    }
    errors++;
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
    const err0 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  if (typeof data == "number" && isFinite(data)) {
    if (data < 0 || isNaN(data)) {
      const err1 = { instancePath, schemaPath: "#/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.file === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "file" }, message: "must have required property 'file'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.pointer === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "pointer" }, message: "must have required property 'pointer'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.line === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "line" }, message: "must have required property 'line'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.column === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "column" }, message: "must have required property 'column'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.endLine === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "endLine" }, message: "must have required property 'endLine'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.endColumn === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "endColumn" }, message: "must have required property 'endColumn'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.file !== void 0) {
      if (typeof data.file !== "string") {
        const err6 = { instancePath: instancePath + "/file", schemaPath: "#/properties/file/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
    }
    if (data.pointer !== void 0) {
      if (typeof data.pointer !== "string") {
        const err7 = { instancePath: instancePath + "/pointer", schemaPath: "#/properties/pointer/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err7];
        } else {
          vErrors.push(err7);
        }
        errors++;
      }
    }
    if (data.line !== void 0) {
      let data2 = data.line;
      if (!(typeof data2 == "number" && (!(data2 % 1) && !isNaN(data2)) && isFinite(data2))) {
        const err8 = { instancePath: instancePath + "/line", schemaPath: "#/properties/line/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
        if (vErrors === null) {
          vErrors = [err8];
        } else {
          vErrors.push(err8);
        }
        errors++;
      }
      if (typeof data2 == "number" && isFinite(data2)) {
        if (data2 < 1 || isNaN(data2)) {
          const err9 = { instancePath: instancePath + "/line", schemaPath: "#/properties/line/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
          if (vErrors === null) {
            vErrors = [err9];
          } else {
            vErrors.push(err9);
          }
          errors++;
        }
      }
    }
    if (data.column !== void 0) {
      let data3 = data.column;
      if (!(typeof data3 == "number" && (!(data3 % 1) && !isNaN(data3)) && isFinite(data3))) {
        const err10 = { instancePath: instancePath + "/column", schemaPath: "#/properties/column/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
        if (vErrors === null) {
          vErrors = [err10];
        } else {
          vErrors.push(err10);
        }
        errors++;
      }
      if (typeof data3 == "number" && isFinite(data3)) {
        if (data3 < 1 || isNaN(data3)) {
          const err11 = { instancePath: instancePath + "/column", schemaPath: "#/properties/column/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
          if (vErrors === null) {
            vErrors = [err11];
          } else {
            vErrors.push(err11);
          }
          errors++;
        }
      }
    }
    if (data.endLine !== void 0) {
      let data4 = data.endLine;
      if (!(typeof data4 == "number" && (!(data4 % 1) && !isNaN(data4)) && isFinite(data4))) {
        const err12 = { instancePath: instancePath + "/endLine", schemaPath: "#/properties/endLine/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
        if (vErrors === null) {
          vErrors = [err12];
        } else {
          vErrors.push(err12);
        }
        errors++;
      }
      if (typeof data4 == "number" && isFinite(data4)) {
        if (data4 < 1 || isNaN(data4)) {
          const err13 = { instancePath: instancePath + "/endLine", schemaPath: "#/properties/endLine/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
          if (vErrors === null) {
            vErrors = [err13];
          } else {
            vErrors.push(err13);
          }
          errors++;
        }
      }
    }
    if (data.endColumn !== void 0) {
      let data5 = data.endColumn;
      if (!(typeof data5 == "number" && (!(data5 % 1) && !isNaN(data5)) && isFinite(data5))) {
        const err14 = { instancePath: instancePath + "/endColumn", schemaPath: "#/properties/endColumn/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
        if (vErrors === null) {
          vErrors = [err14];
        } else {
          vErrors.push(err14);
        }
        errors++;
      }
      if (typeof data5 == "number" && isFinite(data5)) {
        if (data5 < 1 || isNaN(data5)) {
          const err15 = { instancePath: instancePath + "/endColumn", schemaPath: "#/properties/endColumn/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
          if (vErrors === null) {
            vErrors = [err15];
          } else {
            vErrors.push(err15);
          }
          errors++;
        }
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.code === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "code" }, message: "must have required property 'code'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.weight === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "weight" }, message: "must have required property 'weight'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.place === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "place" }, message: "must have required property 'place'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.found === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "found" }, message: "must have required property 'found'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.expected === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "expected" }, message: "must have required property 'expected'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.code !== void 0) {
      if (typeof data.code !== "string") {
        const err5 = { instancePath: instancePath + "/code", schemaPath: "#/properties/code/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err5];
        } else {
          vErrors.push(err5);
        }
        errors++;
      }
    }
    if (data.weight !== void 0) {
      let data1 = data.weight;
      if (!(data1 === "error" || data1 === "warning")) {
        const err6 = { instancePath: instancePath + "/weight", schemaPath: "#/properties/weight/enum", keyword: "enum", params: { allowedValues: schema24.properties.weight.enum }, message: "must be equal to one of the allowed values" };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
    }
    if (data.place !== void 0) {
      if (!validate64(data.place, { instancePath: instancePath + "/place", parentData: data, parentDataProperty: "place", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate64.errors : vErrors.concat(validate64.errors);
        errors = vErrors.length;
      }
    }
    if (data.found !== void 0) {
      if (typeof data.found !== "string") {
        const err7 = { instancePath: instancePath + "/found", schemaPath: "#/properties/found/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err7];
        } else {
          vErrors.push(err7);
        }
        errors++;
      }
    }
    if (data.expected !== void 0) {
      if (typeof data.expected !== "string") {
        const err8 = { instancePath: instancePath + "/expected", schemaPath: "#/properties/expected/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err8];
        } else {
          vErrors.push(err8);
        }
        errors++;
      }
    }
    if (data.mend !== void 0) {
      if (typeof data.mend !== "string") {
        const err9 = { instancePath: instancePath + "/mend", schemaPath: "#/properties/mend/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
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
    if (data.id === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "id" }, message: "must have required property 'id'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.kind !== void 0) {
      if (typeof data.kind !== "string") {
        const err2 = { instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
    if (data.id !== void 0) {
      if (typeof data.id !== "string") {
        const err3 = { instancePath: instancePath + "/id", schemaPath: "#/properties/id/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
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
    const err0 = { instancePath, schemaPath: "#/enum", keyword: "enum", params: { allowedValues: schema29.enum }, message: "must be equal to one of the allowed values" };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.quantity === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "quantity" }, message: "must have required property 'quantity'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.measured === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "measured" }, message: "must have required property 'measured'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.limit === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "limit" }, message: "must have required property 'limit'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.sense === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "sense" }, message: "must have required property 'sense'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.shown === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "shown" }, message: "must have required property 'shown'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.from === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "from" }, message: "must have required property 'from'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.basis === void 0) {
      const err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "basis" }, message: "must have required property 'basis'" };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    if (data.hangsOnStiffness === void 0) {
      const err7 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "hangsOnStiffness" }, message: "must have required property 'hangsOnStiffness'" };
      if (vErrors === null) {
        vErrors = [err7];
      } else {
        vErrors.push(err7);
      }
      errors++;
    }
    if (data.quantity !== void 0) {
      if (typeof data.quantity !== "string") {
        const err8 = { instancePath: instancePath + "/quantity", schemaPath: "#/properties/quantity/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err8];
        } else {
          vErrors.push(err8);
        }
        errors++;
      }
    }
    if (data.measured !== void 0) {
      let data1 = data.measured;
      if (!(typeof data1 == "number" && isFinite(data1))) {
        const err9 = { instancePath: instancePath + "/measured", schemaPath: "#/properties/measured/type", keyword: "type", params: { type: "number" }, message: "must be number" };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
    }
    if (data.limit !== void 0) {
      let data2 = data.limit;
      if (!(typeof data2 == "number" && isFinite(data2))) {
        const err10 = { instancePath: instancePath + "/limit", schemaPath: "#/properties/limit/type", keyword: "type", params: { type: "number" }, message: "must be number" };
        if (vErrors === null) {
          vErrors = [err10];
        } else {
          vErrors.push(err10);
        }
        errors++;
      }
    }
    if (data.sense !== void 0) {
      let data3 = data.sense;
      if (!(data3 === "at most" || data3 === "at least")) {
        const err11 = { instancePath: instancePath + "/sense", schemaPath: "#/properties/sense/enum", keyword: "enum", params: { allowedValues: schema28.properties.sense.enum }, message: "must be equal to one of the allowed values" };
        if (vErrors === null) {
          vErrors = [err11];
        } else {
          vErrors.push(err11);
        }
        errors++;
      }
    }
    if (data.shown !== void 0) {
      let data4 = data.shown;
      if (data4 && typeof data4 == "object" && !Array.isArray(data4)) {
        if (data4.measured === void 0) {
          const err12 = { instancePath: instancePath + "/shown", schemaPath: "#/properties/shown/required", keyword: "required", params: { missingProperty: "measured" }, message: "must have required property 'measured'" };
          if (vErrors === null) {
            vErrors = [err12];
          } else {
            vErrors.push(err12);
          }
          errors++;
        }
        if (data4.limit === void 0) {
          const err13 = { instancePath: instancePath + "/shown", schemaPath: "#/properties/shown/required", keyword: "required", params: { missingProperty: "limit" }, message: "must have required property 'limit'" };
          if (vErrors === null) {
            vErrors = [err13];
          } else {
            vErrors.push(err13);
          }
          errors++;
        }
        if (data4.measured !== void 0) {
          if (typeof data4.measured !== "string") {
            const err14 = { instancePath: instancePath + "/shown/measured", schemaPath: "#/properties/shown/properties/measured/type", keyword: "type", params: { type: "string" }, message: "must be string" };
            if (vErrors === null) {
              vErrors = [err14];
            } else {
              vErrors.push(err14);
            }
            errors++;
          }
        }
        if (data4.limit !== void 0) {
          if (typeof data4.limit !== "string") {
            const err15 = { instancePath: instancePath + "/shown/limit", schemaPath: "#/properties/shown/properties/limit/type", keyword: "type", params: { type: "string" }, message: "must be string" };
            if (vErrors === null) {
              vErrors = [err15];
            } else {
              vErrors.push(err15);
            }
            errors++;
          }
        }
      } else {
        const err16 = { instancePath: instancePath + "/shown", schemaPath: "#/properties/shown/type", keyword: "type", params: { type: "object" }, message: "must be object" };
        if (vErrors === null) {
          vErrors = [err16];
        } else {
          vErrors.push(err16);
        }
        errors++;
      }
    }
    if (data.from !== void 0) {
      if (!validate74(data.from, { instancePath: instancePath + "/from", parentData: data, parentDataProperty: "from", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
        errors = vErrors.length;
      }
    }
    if (data.basis !== void 0) {
      if (typeof data.basis !== "string") {
        const err17 = { instancePath: instancePath + "/basis", schemaPath: "#/properties/basis/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err17];
        } else {
          vErrors.push(err17);
        }
        errors++;
      }
    }
    if (data.utilisation !== void 0) {
      let data9 = data.utilisation;
      if (!(typeof data9 == "number" && isFinite(data9))) {
        const err18 = { instancePath: instancePath + "/utilisation", schemaPath: "#/properties/utilisation/type", keyword: "type", params: { type: "number" }, message: "must be number" };
        if (vErrors === null) {
          vErrors = [err18];
        } else {
          vErrors.push(err18);
        }
        errors++;
      }
    }
    if (data.under !== void 0) {
      let data10 = data.under;
      if (data10 && typeof data10 == "object" && !Array.isArray(data10)) {
        if (data10.combination === void 0) {
          const err19 = { instancePath: instancePath + "/under", schemaPath: "#/properties/under/required", keyword: "required", params: { missingProperty: "combination" }, message: "must have required property 'combination'" };
          if (vErrors === null) {
            vErrors = [err19];
          } else {
            vErrors.push(err19);
          }
          errors++;
        }
        if (data10.bound === void 0) {
          const err20 = { instancePath: instancePath + "/under", schemaPath: "#/properties/under/required", keyword: "required", params: { missingProperty: "bound" }, message: "must have required property 'bound'" };
          if (vErrors === null) {
            vErrors = [err20];
          } else {
            vErrors.push(err20);
          }
          errors++;
        }
        if (data10.combination !== void 0) {
          if (typeof data10.combination !== "string") {
            const err21 = { instancePath: instancePath + "/under/combination", schemaPath: "#/properties/under/properties/combination/type", keyword: "type", params: { type: "string" }, message: "must be string" };
            if (vErrors === null) {
              vErrors = [err21];
            } else {
              vErrors.push(err21);
            }
            errors++;
          }
        }
        if (data10.bound !== void 0) {
          if (!validate76(data10.bound, { instancePath: instancePath + "/under/bound", parentData: data10, parentDataProperty: "bound", rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate76.errors : vErrors.concat(validate76.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err22 = { instancePath: instancePath + "/under", schemaPath: "#/properties/under/type", keyword: "type", params: { type: "object" }, message: "must be object" };
        if (vErrors === null) {
          vErrors = [err22];
        } else {
          vErrors.push(err22);
        }
        errors++;
      }
    }
    if (data.otherBounds !== void 0) {
      let data13 = data.otherBounds;
      if (data13 && typeof data13 == "object" && !Array.isArray(data13)) {
        for (const key0 in data13) {
          if (typeof data13[key0] !== "string") {
            const err23 = { instancePath: instancePath + "/otherBounds/" + key0.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/otherBounds/additionalProperties/type", keyword: "type", params: { type: "string" }, message: "must be string" };
            if (vErrors === null) {
              vErrors = [err23];
            } else {
              vErrors.push(err23);
            }
            errors++;
          }
        }
      } else {
        const err24 = { instancePath: instancePath + "/otherBounds", schemaPath: "#/properties/otherBounds/type", keyword: "type", params: { type: "object" }, message: "must be object" };
        if (vErrors === null) {
          vErrors = [err24];
        } else {
          vErrors.push(err24);
        }
        errors++;
      }
    }
    if (data.hangsOnStiffness !== void 0) {
      if (typeof data.hangsOnStiffness !== "boolean") {
        const err25 = { instancePath: instancePath + "/hangsOnStiffness", schemaPath: "#/properties/hangsOnStiffness/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" };
        if (vErrors === null) {
          vErrors = [err25];
        } else {
          vErrors.push(err25);
        }
        errors++;
      }
    }
    if (data.working !== void 0) {
      let data16 = data.working;
      if (data16 && typeof data16 == "object" && !Array.isArray(data16)) {
        if (data16.formula === void 0) {
          const err26 = { instancePath: instancePath + "/working", schemaPath: "#/properties/working/required", keyword: "required", params: { missingProperty: "formula" }, message: "must have required property 'formula'" };
          if (vErrors === null) {
            vErrors = [err26];
          } else {
            vErrors.push(err26);
          }
          errors++;
        }
        for (const key1 in data16) {
          if (!(key1 === "formula" || key1 === "figures")) {
            const err27 = { instancePath: instancePath + "/working", schemaPath: "#/properties/working/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties" };
            if (vErrors === null) {
              vErrors = [err27];
            } else {
              vErrors.push(err27);
            }
            errors++;
          }
        }
        if (data16.formula !== void 0) {
          if (typeof data16.formula !== "string") {
            const err28 = { instancePath: instancePath + "/working/formula", schemaPath: "#/properties/working/properties/formula/type", keyword: "type", params: { type: "string" }, message: "must be string" };
            if (vErrors === null) {
              vErrors = [err28];
            } else {
              vErrors.push(err28);
            }
            errors++;
          }
        }
        if (data16.figures !== void 0) {
          if (typeof data16.figures !== "string") {
            const err29 = { instancePath: instancePath + "/working/figures", schemaPath: "#/properties/working/properties/figures/type", keyword: "type", params: { type: "string" }, message: "must be string" };
            if (vErrors === null) {
              vErrors = [err29];
            } else {
              vErrors.push(err29);
            }
            errors++;
          }
        }
      } else {
        const err30 = { instancePath: instancePath + "/working", schemaPath: "#/properties/working/type", keyword: "type", params: { type: "object" }, message: "must be object" };
        if (vErrors === null) {
          vErrors = [err30];
        } else {
          vErrors.push(err30);
        }
        errors++;
      }
    }
    if (data.soundAbove !== void 0) {
      let data19 = data.soundAbove;
      if (data19 && typeof data19 == "object" && !Array.isArray(data19)) {
        if (data19.stiffness === void 0) {
          const err31 = { instancePath: instancePath + "/soundAbove", schemaPath: "#/properties/soundAbove/required", keyword: "required", params: { missingProperty: "stiffness" }, message: "must have required property 'stiffness'" };
          if (vErrors === null) {
            vErrors = [err31];
          } else {
            vErrors.push(err31);
          }
          errors++;
        }
        if (data19.shown === void 0) {
          const err32 = { instancePath: instancePath + "/soundAbove", schemaPath: "#/properties/soundAbove/required", keyword: "required", params: { missingProperty: "shown" }, message: "must have required property 'shown'" };
          if (vErrors === null) {
            vErrors = [err32];
          } else {
            vErrors.push(err32);
          }
          errors++;
        }
        for (const key2 in data19) {
          if (!(key2 === "stiffness" || key2 === "shown")) {
            const err33 = { instancePath: instancePath + "/soundAbove", schemaPath: "#/properties/soundAbove/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key2 }, message: "must NOT have additional properties" };
            if (vErrors === null) {
              vErrors = [err33];
            } else {
              vErrors.push(err33);
            }
            errors++;
          }
        }
        if (data19.stiffness !== void 0) {
          let data20 = data19.stiffness;
          if (!(typeof data20 == "number" && isFinite(data20))) {
            const err34 = { instancePath: instancePath + "/soundAbove/stiffness", schemaPath: "#/properties/soundAbove/properties/stiffness/type", keyword: "type", params: { type: "number" }, message: "must be number" };
            if (vErrors === null) {
              vErrors = [err34];
            } else {
              vErrors.push(err34);
            }
            errors++;
          }
        }
        if (data19.shown !== void 0) {
          if (typeof data19.shown !== "string") {
            const err35 = { instancePath: instancePath + "/soundAbove/shown", schemaPath: "#/properties/soundAbove/properties/shown/type", keyword: "type", params: { type: "string" }, message: "must be string" };
            if (vErrors === null) {
              vErrors = [err35];
            } else {
              vErrors.push(err35);
            }
            errors++;
          }
        }
      } else {
        const err36 = { instancePath: instancePath + "/soundAbove", schemaPath: "#/properties/soundAbove/type", keyword: "type", params: { type: "object" }, message: "must be object" };
        if (vErrors === null) {
          vErrors = [err36];
        } else {
          vErrors.push(err36);
        }
        errors++;
      }
    }
  } else {
    const err37 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err37];
    } else {
      vErrors.push(err37);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.words === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "words" }, message: "must have required property 'words'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.edits === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "edits" }, message: "must have required property 'edits'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.words !== void 0) {
      if (typeof data.words !== "string") {
        const err2 = { instancePath: instancePath + "/words", schemaPath: "#/properties/words/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
    if (data.edits !== void 0) {
      let data1 = data.edits;
      if (Array.isArray(data1)) {
        const len0 = data1.length;
        for (let i0 = 0; i0 < len0; i0++) {
          let data2 = data1[i0];
          if (data2 && typeof data2 == "object" && !Array.isArray(data2)) {
            if (data2.pointer === void 0) {
              const err3 = { instancePath: instancePath + "/edits/" + i0, schemaPath: "#/properties/edits/items/required", keyword: "required", params: { missingProperty: "pointer" }, message: "must have required property 'pointer'" };
              if (vErrors === null) {
                vErrors = [err3];
              } else {
                vErrors.push(err3);
              }
              errors++;
            }
            if (data2.to === void 0) {
              const err4 = { instancePath: instancePath + "/edits/" + i0, schemaPath: "#/properties/edits/items/required", keyword: "required", params: { missingProperty: "to" }, message: "must have required property 'to'" };
              if (vErrors === null) {
                vErrors = [err4];
              } else {
                vErrors.push(err4);
              }
              errors++;
            }
            if (data2.pointer !== void 0) {
              if (typeof data2.pointer !== "string") {
                const err5 = { instancePath: instancePath + "/edits/" + i0 + "/pointer", schemaPath: "#/properties/edits/items/properties/pointer/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err5];
                } else {
                  vErrors.push(err5);
                }
                errors++;
              }
            }
          } else {
            const err6 = { instancePath: instancePath + "/edits/" + i0, schemaPath: "#/properties/edits/items/type", keyword: "type", params: { type: "object" }, message: "must be object" };
            if (vErrors === null) {
              vErrors = [err6];
            } else {
              vErrors.push(err6);
            }
            errors++;
          }
        }
      } else {
        const err7 = { instancePath: instancePath + "/edits", schemaPath: "#/properties/edits/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err7];
        } else {
          vErrors.push(err7);
        }
        errors++;
      }
    }
    if (data.after !== void 0) {
      if (typeof data.after !== "string") {
        const err8 = { instancePath: instancePath + "/after", schemaPath: "#/properties/after/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err8];
        } else {
          vErrors.push(err8);
        }
        errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.rule === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.message === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "message" }, message: "must have required property 'message'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.level === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "level" }, message: "must have required property 'level'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.at === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "at" }, message: "must have required property 'at'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.where === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "where" }, message: "must have required property 'where'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.text === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "text" }, message: "must have required property 'text'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.shown === void 0) {
      const err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "shown" }, message: "must have required property 'shown'" };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    if (data.related === void 0) {
      const err7 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "related" }, message: "must have required property 'related'" };
      if (vErrors === null) {
        vErrors = [err7];
      } else {
        vErrors.push(err7);
      }
      errors++;
    }
    if (data.place === void 0) {
      const err8 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "place" }, message: "must have required property 'place'" };
      if (vErrors === null) {
        vErrors = [err8];
      } else {
        vErrors.push(err8);
      }
      errors++;
    }
    if (data.fingerprint === void 0) {
      const err9 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "fingerprint" }, message: "must have required property 'fingerprint'" };
      if (vErrors === null) {
        vErrors = [err9];
      } else {
        vErrors.push(err9);
      }
      errors++;
    }
    if (data.cures === void 0) {
      const err10 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "cures" }, message: "must have required property 'cures'" };
      if (vErrors === null) {
        vErrors = [err10];
      } else {
        vErrors.push(err10);
      }
      errors++;
    }
    if (data.rule !== void 0) {
      if (typeof data.rule !== "string") {
        const err11 = { instancePath: instancePath + "/rule", schemaPath: "#/properties/rule/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err11];
        } else {
          vErrors.push(err11);
        }
        errors++;
      }
    }
    if (data.message !== void 0) {
      if (typeof data.message !== "string") {
        const err12 = { instancePath: instancePath + "/message", schemaPath: "#/properties/message/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err12];
        } else {
          vErrors.push(err12);
        }
        errors++;
      }
    }
    if (data.level !== void 0) {
      if (!validate54(data.level, { instancePath: instancePath + "/level", parentData: data, parentDataProperty: "level", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.at !== void 0) {
      if (!validate69(data.at, { instancePath: instancePath + "/at", parentData: data, parentDataProperty: "at", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate69.errors : vErrors.concat(validate69.errors);
        errors = vErrors.length;
      }
    }
    if (data.where !== void 0) {
      if (typeof data.where !== "string") {
        const err13 = { instancePath: instancePath + "/where", schemaPath: "#/properties/where/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err13];
        } else {
          vErrors.push(err13);
        }
        errors++;
      }
    }
    if (data.text !== void 0) {
      if (typeof data.text !== "string") {
        const err14 = { instancePath: instancePath + "/text", schemaPath: "#/properties/text/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err14];
        } else {
          vErrors.push(err14);
        }
        errors++;
      }
    }
    if (data.shown !== void 0) {
      let data6 = data.shown;
      if (data6 && typeof data6 == "object" && !Array.isArray(data6)) {
        for (const key0 in data6) {
          if (typeof data6[key0] !== "string") {
            const err15 = { instancePath: instancePath + "/shown/" + key0.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/shown/additionalProperties/type", keyword: "type", params: { type: "string" }, message: "must be string" };
            if (vErrors === null) {
              vErrors = [err15];
            } else {
              vErrors.push(err15);
            }
            errors++;
          }
        }
      } else {
        const err16 = { instancePath: instancePath + "/shown", schemaPath: "#/properties/shown/type", keyword: "type", params: { type: "object" }, message: "must be object" };
        if (vErrors === null) {
          vErrors = [err16];
        } else {
          vErrors.push(err16);
        }
        errors++;
      }
    }
    if (data.related !== void 0) {
      let data8 = data.related;
      if (Array.isArray(data8)) {
        const len0 = data8.length;
        for (let i0 = 0; i0 < len0; i0++) {
          let data9 = data8[i0];
          if (data9 && typeof data9 == "object" && !Array.isArray(data9)) {
            if (data9.at === void 0) {
              const err17 = { instancePath: instancePath + "/related/" + i0, schemaPath: "#/properties/related/items/required", keyword: "required", params: { missingProperty: "at" }, message: "must have required property 'at'" };
              if (vErrors === null) {
                vErrors = [err17];
              } else {
                vErrors.push(err17);
              }
              errors++;
            }
            if (data9.place === void 0) {
              const err18 = { instancePath: instancePath + "/related/" + i0, schemaPath: "#/properties/related/items/required", keyword: "required", params: { missingProperty: "place" }, message: "must have required property 'place'" };
              if (vErrors === null) {
                vErrors = [err18];
              } else {
                vErrors.push(err18);
              }
              errors++;
            }
            if (data9.at !== void 0) {
              if (!validate69(data9.at, { instancePath: instancePath + "/related/" + i0 + "/at", parentData: data9, parentDataProperty: "at", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate69.errors : vErrors.concat(validate69.errors);
                errors = vErrors.length;
              }
            }
            if (data9.place !== void 0) {
              if (!validate64(data9.place, { instancePath: instancePath + "/related/" + i0 + "/place", parentData: data9, parentDataProperty: "place", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate64.errors : vErrors.concat(validate64.errors);
                errors = vErrors.length;
              }
            }
          } else {
            const err19 = { instancePath: instancePath + "/related/" + i0, schemaPath: "#/properties/related/items/type", keyword: "type", params: { type: "object" }, message: "must be object" };
            if (vErrors === null) {
              vErrors = [err19];
            } else {
              vErrors.push(err19);
            }
            errors++;
          }
        }
      } else {
        const err20 = { instancePath: instancePath + "/related", schemaPath: "#/properties/related/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err20];
        } else {
          vErrors.push(err20);
        }
        errors++;
      }
    }
    if (data.advice !== void 0) {
      if (typeof data.advice !== "string") {
        const err21 = { instancePath: instancePath + "/advice", schemaPath: "#/properties/advice/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err21];
        } else {
          vErrors.push(err21);
        }
        errors++;
      }
    }
    if (data.measure !== void 0) {
      if (!validate73(data.measure, { instancePath: instancePath + "/measure", parentData: data, parentDataProperty: "measure", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate73.errors : vErrors.concat(validate73.errors);
        errors = vErrors.length;
      }
    }
    if (data.place !== void 0) {
      if (!validate64(data.place, { instancePath: instancePath + "/place", parentData: data, parentDataProperty: "place", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate64.errors : vErrors.concat(validate64.errors);
        errors = vErrors.length;
      }
    }
    if (data.fingerprint !== void 0) {
      if (typeof data.fingerprint !== "string") {
        const err22 = { instancePath: instancePath + "/fingerprint", schemaPath: "#/properties/fingerprint/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err22];
        } else {
          vErrors.push(err22);
        }
        errors++;
      }
    }
    if (data.conceded !== void 0) {
      let data16 = data.conceded;
      if (data16 && typeof data16 == "object" && !Array.isArray(data16)) {
        if (data16.reason === void 0) {
          const err23 = { instancePath: instancePath + "/conceded", schemaPath: "#/properties/conceded/required", keyword: "required", params: { missingProperty: "reason" }, message: "must have required property 'reason'" };
          if (vErrors === null) {
            vErrors = [err23];
          } else {
            vErrors.push(err23);
          }
          errors++;
        }
        if (data16.who === void 0) {
          const err24 = { instancePath: instancePath + "/conceded", schemaPath: "#/properties/conceded/required", keyword: "required", params: { missingProperty: "who" }, message: "must have required property 'who'" };
          if (vErrors === null) {
            vErrors = [err24];
          } else {
            vErrors.push(err24);
          }
          errors++;
        }
        if (data16.until === void 0) {
          const err25 = { instancePath: instancePath + "/conceded", schemaPath: "#/properties/conceded/required", keyword: "required", params: { missingProperty: "until" }, message: "must have required property 'until'" };
          if (vErrors === null) {
            vErrors = [err25];
          } else {
            vErrors.push(err25);
          }
          errors++;
        }
        if (data16.reason !== void 0) {
          if (typeof data16.reason !== "string") {
            const err26 = { instancePath: instancePath + "/conceded/reason", schemaPath: "#/properties/conceded/properties/reason/type", keyword: "type", params: { type: "string" }, message: "must be string" };
            if (vErrors === null) {
              vErrors = [err26];
            } else {
              vErrors.push(err26);
            }
            errors++;
          }
        }
        if (data16.who !== void 0) {
          if (typeof data16.who !== "string") {
            const err27 = { instancePath: instancePath + "/conceded/who", schemaPath: "#/properties/conceded/properties/who/type", keyword: "type", params: { type: "string" }, message: "must be string" };
            if (vErrors === null) {
              vErrors = [err27];
            } else {
              vErrors.push(err27);
            }
            errors++;
          }
        }
        if (data16.until !== void 0) {
          if (typeof data16.until !== "string") {
            const err28 = { instancePath: instancePath + "/conceded/until", schemaPath: "#/properties/conceded/properties/until/type", keyword: "type", params: { type: "string" }, message: "must be string" };
            if (vErrors === null) {
              vErrors = [err28];
            } else {
              vErrors.push(err28);
            }
            errors++;
          }
        }
      } else {
        const err29 = { instancePath: instancePath + "/conceded", schemaPath: "#/properties/conceded/type", keyword: "type", params: { type: "object" }, message: "must be object" };
        if (vErrors === null) {
          vErrors = [err29];
        } else {
          vErrors.push(err29);
        }
        errors++;
      }
    }
    if (data.cures !== void 0) {
      let data20 = data.cures;
      if (Array.isArray(data20)) {
        const len1 = data20.length;
        for (let i1 = 0; i1 < len1; i1++) {
          if (!validate80(data20[i1], { instancePath: instancePath + "/cures/" + i1, parentData: data20, parentDataProperty: i1, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate80.errors : vErrors.concat(validate80.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err30 = { instancePath: instancePath + "/cures", schemaPath: "#/properties/cures/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err30];
        } else {
          vErrors.push(err30);
        }
        errors++;
      }
    }
  } else {
    const err31 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err31];
    } else {
      vErrors.push(err31);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.file === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "file" }, message: "must have required property 'file'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.title === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "title" }, message: "must have required property 'title'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.units === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "units" }, message: "must have required property 'units'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.verdict === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "verdict" }, message: "must have required property 'verdict'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.complete === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "complete" }, message: "must have required property 'complete'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.counts === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "counts" }, message: "must have required property 'counts'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.problems === void 0) {
      const err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "problems" }, message: "must have required property 'problems'" };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    if (data.findings === void 0) {
      const err7 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "findings" }, message: "must have required property 'findings'" };
      if (vErrors === null) {
        vErrors = [err7];
      } else {
        vErrors.push(err7);
      }
      errors++;
    }
    if (data.undecided === void 0) {
      const err8 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "undecided" }, message: "must have required property 'undecided'" };
      if (vErrors === null) {
        vErrors = [err8];
      } else {
        vErrors.push(err8);
      }
      errors++;
    }
    if (data.rules === void 0) {
      const err9 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "rules" }, message: "must have required property 'rules'" };
      if (vErrors === null) {
        vErrors = [err9];
      } else {
        vErrors.push(err9);
      }
      errors++;
    }
    if (data.failures === void 0) {
      const err10 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "failures" }, message: "must have required property 'failures'" };
      if (vErrors === null) {
        vErrors = [err10];
      } else {
        vErrors.push(err10);
      }
      errors++;
    }
    if (data.assumed === void 0) {
      const err11 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "assumed" }, message: "must have required property 'assumed'" };
      if (vErrors === null) {
        vErrors = [err11];
      } else {
        vErrors.push(err11);
      }
      errors++;
    }
    if (data.changed === void 0) {
      const err12 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "changed" }, message: "must have required property 'changed'" };
      if (vErrors === null) {
        vErrors = [err12];
      } else {
        vErrors.push(err12);
      }
      errors++;
    }
    if (data.concessions === void 0) {
      const err13 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "concessions" }, message: "must have required property 'concessions'" };
      if (vErrors === null) {
        vErrors = [err13];
      } else {
        vErrors.push(err13);
      }
      errors++;
    }
    if (data.cureTrials === void 0) {
      const err14 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "cureTrials" }, message: "must have required property 'cureTrials'" };
      if (vErrors === null) {
        vErrors = [err14];
      } else {
        vErrors.push(err14);
      }
      errors++;
    }
    if (data.file !== void 0) {
      if (typeof data.file !== "string") {
        const err15 = { instancePath: instancePath + "/file", schemaPath: "#/properties/file/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err15];
        } else {
          vErrors.push(err15);
        }
        errors++;
      }
    }
    if (data.title !== void 0) {
      if (typeof data.title !== "string") {
        const err16 = { instancePath: instancePath + "/title", schemaPath: "#/properties/title/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err16];
        } else {
          vErrors.push(err16);
        }
        errors++;
      }
    }
    if (data.revision !== void 0) {
      if (typeof data.revision !== "string") {
        const err17 = { instancePath: instancePath + "/revision", schemaPath: "#/properties/revision/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err17];
        } else {
          vErrors.push(err17);
        }
        errors++;
      }
    }
    if (data.units !== void 0) {
      let data3 = data.units;
      if (!(data3 === "mm-N-kg" || data3 === "in-lbf-lb")) {
        const err18 = { instancePath: instancePath + "/units", schemaPath: "#/properties/units/enum", keyword: "enum", params: { allowedValues: schema22.properties.units.enum }, message: "must be equal to one of the allowed values" };
        if (vErrors === null) {
          vErrors = [err18];
        } else {
          vErrors.push(err18);
        }
        errors++;
      }
    }
    if (data.verdict !== void 0) {
      let data4 = data.verdict;
      if (!(data4 === "accept" || data4 === "hold" || data4 === "reject" || data4 === "unread")) {
        const err19 = { instancePath: instancePath + "/verdict", schemaPath: "#/properties/verdict/enum", keyword: "enum", params: { allowedValues: schema22.properties.verdict.enum }, message: "must be equal to one of the allowed values" };
        if (vErrors === null) {
          vErrors = [err19];
        } else {
          vErrors.push(err19);
        }
        errors++;
      }
    }
    if (data.complete !== void 0) {
      if (typeof data.complete !== "boolean") {
        const err20 = { instancePath: instancePath + "/complete", schemaPath: "#/properties/complete/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" };
        if (vErrors === null) {
          vErrors = [err20];
        } else {
          vErrors.push(err20);
        }
        errors++;
      }
    }
    if (data.counts !== void 0) {
      let data6 = data.counts;
      if (data6 && typeof data6 == "object" && !Array.isArray(data6)) {
        if (data6.bars === void 0) {
          const err21 = { instancePath: instancePath + "/counts", schemaPath: "#/properties/counts/required", keyword: "required", params: { missingProperty: "bars" }, message: "must have required property 'bars'" };
          if (vErrors === null) {
            vErrors = [err21];
          } else {
            vErrors.push(err21);
          }
          errors++;
        }
        if (data6.joints === void 0) {
          const err22 = { instancePath: instancePath + "/counts", schemaPath: "#/properties/counts/required", keyword: "required", params: { missingProperty: "joints" }, message: "must have required property 'joints'" };
          if (vErrors === null) {
            vErrors = [err22];
          } else {
            vErrors.push(err22);
          }
          errors++;
        }
        if (data6.cases === void 0) {
          const err23 = { instancePath: instancePath + "/counts", schemaPath: "#/properties/counts/required", keyword: "required", params: { missingProperty: "cases" }, message: "must have required property 'cases'" };
          if (vErrors === null) {
            vErrors = [err23];
          } else {
            vErrors.push(err23);
          }
          errors++;
        }
        if (data6.parts === void 0) {
          const err24 = { instancePath: instancePath + "/counts", schemaPath: "#/properties/counts/required", keyword: "required", params: { missingProperty: "parts" }, message: "must have required property 'parts'" };
          if (vErrors === null) {
            vErrors = [err24];
          } else {
            vErrors.push(err24);
          }
          errors++;
        }
        if (data6.bars !== void 0) {
          if (!validate58(data6.bars, { instancePath: instancePath + "/counts/bars", parentData: data6, parentDataProperty: "bars", rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
            errors = vErrors.length;
          }
        }
        if (data6.joints !== void 0) {
          if (!validate58(data6.joints, { instancePath: instancePath + "/counts/joints", parentData: data6, parentDataProperty: "joints", rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
            errors = vErrors.length;
          }
        }
        if (data6.cases !== void 0) {
          if (!validate58(data6.cases, { instancePath: instancePath + "/counts/cases", parentData: data6, parentDataProperty: "cases", rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
            errors = vErrors.length;
          }
        }
        if (data6.parts !== void 0) {
          if (!validate58(data6.parts, { instancePath: instancePath + "/counts/parts", parentData: data6, parentDataProperty: "parts", rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err25 = { instancePath: instancePath + "/counts", schemaPath: "#/properties/counts/type", keyword: "type", params: { type: "object" }, message: "must be object" };
        if (vErrors === null) {
          vErrors = [err25];
        } else {
          vErrors.push(err25);
        }
        errors++;
      }
    }
    if (data.problems !== void 0) {
      let data11 = data.problems;
      if (Array.isArray(data11)) {
        const len0 = data11.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (!validate63(data11[i0], { instancePath: instancePath + "/problems/" + i0, parentData: data11, parentDataProperty: i0, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate63.errors : vErrors.concat(validate63.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err26 = { instancePath: instancePath + "/problems", schemaPath: "#/properties/problems/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err26];
        } else {
          vErrors.push(err26);
        }
        errors++;
      }
    }
    if (data.findings !== void 0) {
      let data13 = data.findings;
      if (Array.isArray(data13)) {
        const len1 = data13.length;
        for (let i1 = 0; i1 < len1; i1++) {
          if (!validate67(data13[i1], { instancePath: instancePath + "/findings/" + i1, parentData: data13, parentDataProperty: i1, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate67.errors : vErrors.concat(validate67.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err27 = { instancePath: instancePath + "/findings", schemaPath: "#/properties/findings/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err27];
        } else {
          vErrors.push(err27);
        }
        errors++;
      }
    }
    if (data.undecided !== void 0) {
      let data15 = data.undecided;
      if (Array.isArray(data15)) {
        const len2 = data15.length;
        for (let i2 = 0; i2 < len2; i2++) {
          let data16 = data15[i2];
          if (data16 && typeof data16 == "object" && !Array.isArray(data16)) {
            if (data16.why === void 0) {
              const err28 = { instancePath: instancePath + "/undecided/" + i2, schemaPath: "#/properties/undecided/items/required", keyword: "required", params: { missingProperty: "why" }, message: "must have required property 'why'" };
              if (vErrors === null) {
                vErrors = [err28];
              } else {
                vErrors.push(err28);
              }
              errors++;
            }
            if (data16.rules === void 0) {
              const err29 = { instancePath: instancePath + "/undecided/" + i2, schemaPath: "#/properties/undecided/items/required", keyword: "required", params: { missingProperty: "rules" }, message: "must have required property 'rules'" };
              if (vErrors === null) {
                vErrors = [err29];
              } else {
                vErrors.push(err29);
              }
              errors++;
            }
            if (data16.at === void 0) {
              const err30 = { instancePath: instancePath + "/undecided/" + i2, schemaPath: "#/properties/undecided/items/required", keyword: "required", params: { missingProperty: "at" }, message: "must have required property 'at'" };
              if (vErrors === null) {
                vErrors = [err30];
              } else {
                vErrors.push(err30);
              }
              errors++;
            }
            if (data16.holds === void 0) {
              const err31 = { instancePath: instancePath + "/undecided/" + i2, schemaPath: "#/properties/undecided/items/required", keyword: "required", params: { missingProperty: "holds" }, message: "must have required property 'holds'" };
              if (vErrors === null) {
                vErrors = [err31];
              } else {
                vErrors.push(err31);
              }
              errors++;
            }
            if (data16.why !== void 0) {
              if (typeof data16.why !== "string") {
                const err32 = { instancePath: instancePath + "/undecided/" + i2 + "/why", schemaPath: "#/properties/undecided/items/properties/why/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err32];
                } else {
                  vErrors.push(err32);
                }
                errors++;
              }
            }
            if (data16.rules !== void 0) {
              let data18 = data16.rules;
              if (Array.isArray(data18)) {
                const len3 = data18.length;
                for (let i3 = 0; i3 < len3; i3++) {
                  if (typeof data18[i3] !== "string") {
                    const err33 = { instancePath: instancePath + "/undecided/" + i2 + "/rules/" + i3, schemaPath: "#/properties/undecided/items/properties/rules/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err33];
                    } else {
                      vErrors.push(err33);
                    }
                    errors++;
                  }
                }
              } else {
                const err34 = { instancePath: instancePath + "/undecided/" + i2 + "/rules", schemaPath: "#/properties/undecided/items/properties/rules/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                if (vErrors === null) {
                  vErrors = [err34];
                } else {
                  vErrors.push(err34);
                }
                errors++;
              }
            }
            if (data16.at !== void 0) {
              let data20 = data16.at;
              if (Array.isArray(data20)) {
                const len4 = data20.length;
                for (let i4 = 0; i4 < len4; i4++) {
                  if (!validate69(data20[i4], { instancePath: instancePath + "/undecided/" + i2 + "/at/" + i4, parentData: data20, parentDataProperty: i4, rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate69.errors : vErrors.concat(validate69.errors);
                    errors = vErrors.length;
                  }
                }
              } else {
                const err35 = { instancePath: instancePath + "/undecided/" + i2 + "/at", schemaPath: "#/properties/undecided/items/properties/at/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                if (vErrors === null) {
                  vErrors = [err35];
                } else {
                  vErrors.push(err35);
                }
                errors++;
              }
            }
            if (data16.holds !== void 0) {
              if (typeof data16.holds !== "boolean") {
                const err36 = { instancePath: instancePath + "/undecided/" + i2 + "/holds", schemaPath: "#/properties/undecided/items/properties/holds/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" };
                if (vErrors === null) {
                  vErrors = [err36];
                } else {
                  vErrors.push(err36);
                }
                errors++;
              }
            }
          } else {
            const err37 = { instancePath: instancePath + "/undecided/" + i2, schemaPath: "#/properties/undecided/items/type", keyword: "type", params: { type: "object" }, message: "must be object" };
            if (vErrors === null) {
              vErrors = [err37];
            } else {
              vErrors.push(err37);
            }
            errors++;
          }
        }
      } else {
        const err38 = { instancePath: instancePath + "/undecided", schemaPath: "#/properties/undecided/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err38];
        } else {
          vErrors.push(err38);
        }
        errors++;
      }
    }
    if (data.rules !== void 0) {
      let data23 = data.rules;
      if (Array.isArray(data23)) {
        const len5 = data23.length;
        for (let i5 = 0; i5 < len5; i5++) {
          let data24 = data23[i5];
          if (data24 && typeof data24 == "object" && !Array.isArray(data24)) {
            if (data24.rule === void 0) {
              const err39 = { instancePath: instancePath + "/rules/" + i5, schemaPath: "#/properties/rules/items/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'" };
              if (vErrors === null) {
                vErrors = [err39];
              } else {
                vErrors.push(err39);
              }
              errors++;
            }
            if (data24.met === void 0) {
              const err40 = { instancePath: instancePath + "/rules/" + i5, schemaPath: "#/properties/rules/items/required", keyword: "required", params: { missingProperty: "met" }, message: "must have required property 'met'" };
              if (vErrors === null) {
                vErrors = [err40];
              } else {
                vErrors.push(err40);
              }
              errors++;
            }
            if (data24.notMet === void 0) {
              const err41 = { instancePath: instancePath + "/rules/" + i5, schemaPath: "#/properties/rules/items/required", keyword: "required", params: { missingProperty: "notMet" }, message: "must have required property 'notMet'" };
              if (vErrors === null) {
                vErrors = [err41];
              } else {
                vErrors.push(err41);
              }
              errors++;
            }
            if (data24.notApplicable === void 0) {
              const err42 = { instancePath: instancePath + "/rules/" + i5, schemaPath: "#/properties/rules/items/required", keyword: "required", params: { missingProperty: "notApplicable" }, message: "must have required property 'notApplicable'" };
              if (vErrors === null) {
                vErrors = [err42];
              } else {
                vErrors.push(err42);
              }
              errors++;
            }
            if (data24.undecided === void 0) {
              const err43 = { instancePath: instancePath + "/rules/" + i5, schemaPath: "#/properties/rules/items/required", keyword: "required", params: { missingProperty: "undecided" }, message: "must have required property 'undecided'" };
              if (vErrors === null) {
                vErrors = [err43];
              } else {
                vErrors.push(err43);
              }
              errors++;
            }
            if (data24.rule !== void 0) {
              if (typeof data24.rule !== "string") {
                const err44 = { instancePath: instancePath + "/rules/" + i5 + "/rule", schemaPath: "#/properties/rules/items/properties/rule/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err44];
                } else {
                  vErrors.push(err44);
                }
                errors++;
              }
            }
            if (data24.met !== void 0) {
              if (!validate58(data24.met, { instancePath: instancePath + "/rules/" + i5 + "/met", parentData: data24, parentDataProperty: "met", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
                errors = vErrors.length;
              }
            }
            if (data24.notMet !== void 0) {
              if (!validate58(data24.notMet, { instancePath: instancePath + "/rules/" + i5 + "/notMet", parentData: data24, parentDataProperty: "notMet", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
                errors = vErrors.length;
              }
            }
            if (data24.notApplicable !== void 0) {
              if (!validate58(data24.notApplicable, { instancePath: instancePath + "/rules/" + i5 + "/notApplicable", parentData: data24, parentDataProperty: "notApplicable", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
                errors = vErrors.length;
              }
            }
            if (data24.undecided !== void 0) {
              if (!validate58(data24.undecided, { instancePath: instancePath + "/rules/" + i5 + "/undecided", parentData: data24, parentDataProperty: "undecided", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
                errors = vErrors.length;
              }
            }
            if (data24.closest !== void 0) {
              let data30 = data24.closest;
              if (data30 && typeof data30 == "object" && !Array.isArray(data30)) {
                if (data30.at === void 0) {
                  const err45 = { instancePath: instancePath + "/rules/" + i5 + "/closest", schemaPath: "#/properties/rules/items/properties/closest/required", keyword: "required", params: { missingProperty: "at" }, message: "must have required property 'at'" };
                  if (vErrors === null) {
                    vErrors = [err45];
                  } else {
                    vErrors.push(err45);
                  }
                  errors++;
                }
                if (data30.utilisation === void 0) {
                  const err46 = { instancePath: instancePath + "/rules/" + i5 + "/closest", schemaPath: "#/properties/rules/items/properties/closest/required", keyword: "required", params: { missingProperty: "utilisation" }, message: "must have required property 'utilisation'" };
                  if (vErrors === null) {
                    vErrors = [err46];
                  } else {
                    vErrors.push(err46);
                  }
                  errors++;
                }
                if (data30.sense === void 0) {
                  const err47 = { instancePath: instancePath + "/rules/" + i5 + "/closest", schemaPath: "#/properties/rules/items/properties/closest/required", keyword: "required", params: { missingProperty: "sense" }, message: "must have required property 'sense'" };
                  if (vErrors === null) {
                    vErrors = [err47];
                  } else {
                    vErrors.push(err47);
                  }
                  errors++;
                }
                if (data30.measured === void 0) {
                  const err48 = { instancePath: instancePath + "/rules/" + i5 + "/closest", schemaPath: "#/properties/rules/items/properties/closest/required", keyword: "required", params: { missingProperty: "measured" }, message: "must have required property 'measured'" };
                  if (vErrors === null) {
                    vErrors = [err48];
                  } else {
                    vErrors.push(err48);
                  }
                  errors++;
                }
                if (data30.limit === void 0) {
                  const err49 = { instancePath: instancePath + "/rules/" + i5 + "/closest", schemaPath: "#/properties/rules/items/properties/closest/required", keyword: "required", params: { missingProperty: "limit" }, message: "must have required property 'limit'" };
                  if (vErrors === null) {
                    vErrors = [err49];
                  } else {
                    vErrors.push(err49);
                  }
                  errors++;
                }
                if (data30.at !== void 0) {
                  if (!validate69(data30.at, { instancePath: instancePath + "/rules/" + i5 + "/closest/at", parentData: data30, parentDataProperty: "at", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate69.errors : vErrors.concat(validate69.errors);
                    errors = vErrors.length;
                  }
                }
                if (data30.utilisation !== void 0) {
                  let data32 = data30.utilisation;
                  if (!(typeof data32 == "number" && isFinite(data32))) {
                    const err50 = { instancePath: instancePath + "/rules/" + i5 + "/closest/utilisation", schemaPath: "#/properties/rules/items/properties/closest/properties/utilisation/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                    if (vErrors === null) {
                      vErrors = [err50];
                    } else {
                      vErrors.push(err50);
                    }
                    errors++;
                  }
                }
                if (data30.measured !== void 0) {
                  if (typeof data30.measured !== "string") {
                    const err51 = { instancePath: instancePath + "/rules/" + i5 + "/closest/measured", schemaPath: "#/properties/rules/items/properties/closest/properties/measured/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err51];
                    } else {
                      vErrors.push(err51);
                    }
                    errors++;
                  }
                }
                if (data30.limit !== void 0) {
                  if (typeof data30.limit !== "string") {
                    const err52 = { instancePath: instancePath + "/rules/" + i5 + "/closest/limit", schemaPath: "#/properties/rules/items/properties/closest/properties/limit/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err52];
                    } else {
                      vErrors.push(err52);
                    }
                    errors++;
                  }
                }
                if (data30.sense !== void 0) {
                  let data35 = data30.sense;
                  if (!(data35 === "at most" || data35 === "at least")) {
                    const err53 = { instancePath: instancePath + "/rules/" + i5 + "/closest/sense", schemaPath: "#/properties/rules/items/properties/closest/properties/sense/enum", keyword: "enum", params: { allowedValues: schema22.properties.rules.items.properties.closest.properties.sense.enum }, message: "must be equal to one of the allowed values" };
                    if (vErrors === null) {
                      vErrors = [err53];
                    } else {
                      vErrors.push(err53);
                    }
                    errors++;
                  }
                }
              } else {
                const err54 = { instancePath: instancePath + "/rules/" + i5 + "/closest", schemaPath: "#/properties/rules/items/properties/closest/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                if (vErrors === null) {
                  vErrors = [err54];
                } else {
                  vErrors.push(err54);
                }
                errors++;
              }
            }
          } else {
            const err55 = { instancePath: instancePath + "/rules/" + i5, schemaPath: "#/properties/rules/items/type", keyword: "type", params: { type: "object" }, message: "must be object" };
            if (vErrors === null) {
              vErrors = [err55];
            } else {
              vErrors.push(err55);
            }
            errors++;
          }
        }
      } else {
        const err56 = { instancePath: instancePath + "/rules", schemaPath: "#/properties/rules/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err56];
        } else {
          vErrors.push(err56);
        }
        errors++;
      }
    }
    if (data.failures !== void 0) {
      let data36 = data.failures;
      if (Array.isArray(data36)) {
        const len6 = data36.length;
        for (let i6 = 0; i6 < len6; i6++) {
          let data37 = data36[i6];
          if (data37 && typeof data37 == "object" && !Array.isArray(data37)) {
            if (data37.message === void 0) {
              const err57 = { instancePath: instancePath + "/failures/" + i6, schemaPath: "#/properties/failures/items/required", keyword: "required", params: { missingProperty: "message" }, message: "must have required property 'message'" };
              if (vErrors === null) {
                vErrors = [err57];
              } else {
                vErrors.push(err57);
              }
              errors++;
            }
            if (data37.rule !== void 0) {
              if (typeof data37.rule !== "string") {
                const err58 = { instancePath: instancePath + "/failures/" + i6 + "/rule", schemaPath: "#/properties/failures/items/properties/rule/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err58];
                } else {
                  vErrors.push(err58);
                }
                errors++;
              }
            }
            if (data37.fact !== void 0) {
              if (typeof data37.fact !== "string") {
                const err59 = { instancePath: instancePath + "/failures/" + i6 + "/fact", schemaPath: "#/properties/failures/items/properties/fact/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err59];
                } else {
                  vErrors.push(err59);
                }
                errors++;
              }
            }
            if (data37.at !== void 0) {
              if (!validate69(data37.at, { instancePath: instancePath + "/failures/" + i6 + "/at", parentData: data37, parentDataProperty: "at", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate69.errors : vErrors.concat(validate69.errors);
                errors = vErrors.length;
              }
            }
            if (data37.message !== void 0) {
              if (typeof data37.message !== "string") {
                const err60 = { instancePath: instancePath + "/failures/" + i6 + "/message", schemaPath: "#/properties/failures/items/properties/message/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err60];
                } else {
                  vErrors.push(err60);
                }
                errors++;
              }
            }
          } else {
            const err61 = { instancePath: instancePath + "/failures/" + i6, schemaPath: "#/properties/failures/items/type", keyword: "type", params: { type: "object" }, message: "must be object" };
            if (vErrors === null) {
              vErrors = [err61];
            } else {
              vErrors.push(err61);
            }
            errors++;
          }
        }
      } else {
        const err62 = { instancePath: instancePath + "/failures", schemaPath: "#/properties/failures/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err62];
        } else {
          vErrors.push(err62);
        }
        errors++;
      }
    }
    if (data.assumed !== void 0) {
      let data42 = data.assumed;
      if (Array.isArray(data42)) {
        const len7 = data42.length;
        for (let i7 = 0; i7 < len7; i7++) {
          if (typeof data42[i7] !== "string") {
            const err63 = { instancePath: instancePath + "/assumed/" + i7, schemaPath: "#/properties/assumed/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
            if (vErrors === null) {
              vErrors = [err63];
            } else {
              vErrors.push(err63);
            }
            errors++;
          }
        }
      } else {
        const err64 = { instancePath: instancePath + "/assumed", schemaPath: "#/properties/assumed/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err64];
        } else {
          vErrors.push(err64);
        }
        errors++;
      }
    }
    if (data.changed !== void 0) {
      let data44 = data.changed;
      if (Array.isArray(data44)) {
        const len8 = data44.length;
        for (let i8 = 0; i8 < len8; i8++) {
          let data45 = data44[i8];
          if (data45 && typeof data45 == "object" && !Array.isArray(data45)) {
            if (data45.what === void 0) {
              const err65 = { instancePath: instancePath + "/changed/" + i8, schemaPath: "#/properties/changed/items/required", keyword: "required", params: { missingProperty: "what" }, message: "must have required property 'what'" };
              if (vErrors === null) {
                vErrors = [err65];
              } else {
                vErrors.push(err65);
              }
              errors++;
            }
            if (data45.value === void 0) {
              const err66 = { instancePath: instancePath + "/changed/" + i8, schemaPath: "#/properties/changed/items/required", keyword: "required", params: { missingProperty: "value" }, message: "must have required property 'value'" };
              if (vErrors === null) {
                vErrors = [err66];
              } else {
                vErrors.push(err66);
              }
              errors++;
            }
            if (data45.usual === void 0) {
              const err67 = { instancePath: instancePath + "/changed/" + i8, schemaPath: "#/properties/changed/items/required", keyword: "required", params: { missingProperty: "usual" }, message: "must have required property 'usual'" };
              if (vErrors === null) {
                vErrors = [err67];
              } else {
                vErrors.push(err67);
              }
              errors++;
            }
            if (data45.by === void 0) {
              const err68 = { instancePath: instancePath + "/changed/" + i8, schemaPath: "#/properties/changed/items/required", keyword: "required", params: { missingProperty: "by" }, message: "must have required property 'by'" };
              if (vErrors === null) {
                vErrors = [err68];
              } else {
                vErrors.push(err68);
              }
              errors++;
            }
            if (data45.parts === void 0) {
              const err69 = { instancePath: instancePath + "/changed/" + i8, schemaPath: "#/properties/changed/items/required", keyword: "required", params: { missingProperty: "parts" }, message: "must have required property 'parts'" };
              if (vErrors === null) {
                vErrors = [err69];
              } else {
                vErrors.push(err69);
              }
              errors++;
            }
            for (const key0 in data45) {
              if (!(key0 === "what" || key0 === "value" || key0 === "usual" || key0 === "by" || key0 === "parts")) {
                const err70 = { instancePath: instancePath + "/changed/" + i8, schemaPath: "#/properties/changed/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
                if (vErrors === null) {
                  vErrors = [err70];
                } else {
                  vErrors.push(err70);
                }
                errors++;
              }
            }
            if (data45.what !== void 0) {
              if (typeof data45.what !== "string") {
                const err71 = { instancePath: instancePath + "/changed/" + i8 + "/what", schemaPath: "#/properties/changed/items/properties/what/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err71];
                } else {
                  vErrors.push(err71);
                }
                errors++;
              }
            }
            if (data45.value !== void 0) {
              if (typeof data45.value !== "string") {
                const err72 = { instancePath: instancePath + "/changed/" + i8 + "/value", schemaPath: "#/properties/changed/items/properties/value/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err72];
                } else {
                  vErrors.push(err72);
                }
                errors++;
              }
            }
            if (data45.usual !== void 0) {
              if (typeof data45.usual !== "string") {
                const err73 = { instancePath: instancePath + "/changed/" + i8 + "/usual", schemaPath: "#/properties/changed/items/properties/usual/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err73];
                } else {
                  vErrors.push(err73);
                }
                errors++;
              }
            }
            if (data45.by !== void 0) {
              let data49 = data45.by;
              if (!(data49 === "house" || data49 === "frame" || data49 === "part")) {
                const err74 = { instancePath: instancePath + "/changed/" + i8 + "/by", schemaPath: "#/properties/changed/items/properties/by/enum", keyword: "enum", params: { allowedValues: schema22.properties.changed.items.properties.by.enum }, message: "must be equal to one of the allowed values" };
                if (vErrors === null) {
                  vErrors = [err74];
                } else {
                  vErrors.push(err74);
                }
                errors++;
              }
            }
            if (data45.parts !== void 0) {
              let data50 = data45.parts;
              if (Array.isArray(data50)) {
                const len9 = data50.length;
                for (let i9 = 0; i9 < len9; i9++) {
                  if (typeof data50[i9] !== "string") {
                    const err75 = { instancePath: instancePath + "/changed/" + i8 + "/parts/" + i9, schemaPath: "#/properties/changed/items/properties/parts/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err75];
                    } else {
                      vErrors.push(err75);
                    }
                    errors++;
                  }
                }
              } else {
                const err76 = { instancePath: instancePath + "/changed/" + i8 + "/parts", schemaPath: "#/properties/changed/items/properties/parts/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                if (vErrors === null) {
                  vErrors = [err76];
                } else {
                  vErrors.push(err76);
                }
                errors++;
              }
            }
          } else {
            const err77 = { instancePath: instancePath + "/changed/" + i8, schemaPath: "#/properties/changed/items/type", keyword: "type", params: { type: "object" }, message: "must be object" };
            if (vErrors === null) {
              vErrors = [err77];
            } else {
              vErrors.push(err77);
            }
            errors++;
          }
        }
      } else {
        const err78 = { instancePath: instancePath + "/changed", schemaPath: "#/properties/changed/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err78];
        } else {
          vErrors.push(err78);
        }
        errors++;
      }
    }
    if (data.cureTrials !== void 0) {
      let data52 = data.cureTrials;
      if (data52 && typeof data52 == "object" && !Array.isArray(data52)) {
        if (data52.tried === void 0) {
          const err79 = { instancePath: instancePath + "/cureTrials", schemaPath: "#/properties/cureTrials/required", keyword: "required", params: { missingProperty: "tried" }, message: "must have required property 'tried'" };
          if (vErrors === null) {
            vErrors = [err79];
          } else {
            vErrors.push(err79);
          }
          errors++;
        }
        if (data52.untried === void 0) {
          const err80 = { instancePath: instancePath + "/cureTrials", schemaPath: "#/properties/cureTrials/required", keyword: "required", params: { missingProperty: "untried" }, message: "must have required property 'untried'" };
          if (vErrors === null) {
            vErrors = [err80];
          } else {
            vErrors.push(err80);
          }
          errors++;
        }
        for (const key1 in data52) {
          if (!(key1 === "tried" || key1 === "untried")) {
            const err81 = { instancePath: instancePath + "/cureTrials", schemaPath: "#/properties/cureTrials/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties" };
            if (vErrors === null) {
              vErrors = [err81];
            } else {
              vErrors.push(err81);
            }
            errors++;
          }
        }
        if (data52.tried !== void 0) {
          if (!validate58(data52.tried, { instancePath: instancePath + "/cureTrials/tried", parentData: data52, parentDataProperty: "tried", rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
            errors = vErrors.length;
          }
        }
        if (data52.untried !== void 0) {
          if (!validate58(data52.untried, { instancePath: instancePath + "/cureTrials/untried", parentData: data52, parentDataProperty: "untried", rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err82 = { instancePath: instancePath + "/cureTrials", schemaPath: "#/properties/cureTrials/type", keyword: "type", params: { type: "object" }, message: "must be object" };
        if (vErrors === null) {
          vErrors = [err82];
        } else {
          vErrors.push(err82);
        }
        errors++;
      }
    }
    if (data.concessions !== void 0) {
      let data55 = data.concessions;
      if (Array.isArray(data55)) {
        const len10 = data55.length;
        for (let i10 = 0; i10 < len10; i10++) {
          if (typeof data55[i10] !== "string") {
            const err83 = { instancePath: instancePath + "/concessions/" + i10, schemaPath: "#/properties/concessions/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
            if (vErrors === null) {
              vErrors = [err83];
            } else {
              vErrors.push(err83);
            }
            errors++;
          }
        }
      } else {
        const err84 = { instancePath: instancePath + "/concessions", schemaPath: "#/properties/concessions/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err84];
        } else {
          vErrors.push(err84);
        }
        errors++;
      }
    }
  } else {
    const err85 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err85];
    } else {
      vErrors.push(err85);
    }
    errors++;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.formatVersion === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "formatVersion" }, message: "must have required property 'formatVersion'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.tool === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "tool" }, message: "must have required property 'tool'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.faults === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "faults" }, message: "must have required property 'faults'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.rules === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "rules" }, message: "must have required property 'rules'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.frames === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "frames" }, message: "must have required property 'frames'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.total === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "total" }, message: "must have required property 'total'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.formatVersion !== void 0) {
      let data0 = data.formatVersion;
      if (typeof data0 === "string") {
        if (!pattern3.test(data0)) {
          const err6 = { instancePath: instancePath + "/formatVersion", schemaPath: "#/properties/formatVersion/pattern", keyword: "pattern", params: { pattern: "^1\\.[0-9]+$" }, message: 'must match pattern "^1\\.[0-9]+$"' };
          if (vErrors === null) {
            vErrors = [err6];
          } else {
            vErrors.push(err6);
          }
          errors++;
        }
      } else {
        const err7 = { instancePath: instancePath + "/formatVersion", schemaPath: "#/properties/formatVersion/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err7];
        } else {
          vErrors.push(err7);
        }
        errors++;
      }
    }
    if (data.tool !== void 0) {
      let data1 = data.tool;
      if (data1 && typeof data1 == "object" && !Array.isArray(data1)) {
        if (data1.name === void 0) {
          const err8 = { instancePath: instancePath + "/tool", schemaPath: "#/properties/tool/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
          if (vErrors === null) {
            vErrors = [err8];
          } else {
            vErrors.push(err8);
          }
          errors++;
        }
        if (data1.version === void 0) {
          const err9 = { instancePath: instancePath + "/tool", schemaPath: "#/properties/tool/required", keyword: "required", params: { missingProperty: "version" }, message: "must have required property 'version'" };
          if (vErrors === null) {
            vErrors = [err9];
          } else {
            vErrors.push(err9);
          }
          errors++;
        }
        if (data1.name !== void 0) {
          if ("trysquare" !== data1.name) {
            const err10 = { instancePath: instancePath + "/tool/name", schemaPath: "#/properties/tool/properties/name/const", keyword: "const", params: { allowedValue: "trysquare" }, message: "must be equal to constant" };
            if (vErrors === null) {
              vErrors = [err10];
            } else {
              vErrors.push(err10);
            }
            errors++;
          }
        }
        if (data1.version !== void 0) {
          if (typeof data1.version !== "string") {
            const err11 = { instancePath: instancePath + "/tool/version", schemaPath: "#/properties/tool/properties/version/type", keyword: "type", params: { type: "string" }, message: "must be string" };
            if (vErrors === null) {
              vErrors = [err11];
            } else {
              vErrors.push(err11);
            }
            errors++;
          }
        }
      } else {
        const err12 = { instancePath: instancePath + "/tool", schemaPath: "#/properties/tool/type", keyword: "type", params: { type: "object" }, message: "must be object" };
        if (vErrors === null) {
          vErrors = [err12];
        } else {
          vErrors.push(err12);
        }
        errors++;
      }
    }
    if (data.faults !== void 0) {
      let data4 = data.faults;
      if (Array.isArray(data4)) {
        const len0 = data4.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (typeof data4[i0] !== "string") {
            const err13 = { instancePath: instancePath + "/faults/" + i0, schemaPath: "#/properties/faults/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
            if (vErrors === null) {
              vErrors = [err13];
            } else {
              vErrors.push(err13);
            }
            errors++;
          }
        }
      } else {
        const err14 = { instancePath: instancePath + "/faults", schemaPath: "#/properties/faults/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err14];
        } else {
          vErrors.push(err14);
        }
        errors++;
      }
    }
    if (data.rules !== void 0) {
      let data6 = data.rules;
      if (Array.isArray(data6)) {
        const len1 = data6.length;
        for (let i1 = 0; i1 < len1; i1++) {
          if (!validate53(data6[i1], { instancePath: instancePath + "/rules/" + i1, parentData: data6, parentDataProperty: i1, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate53.errors : vErrors.concat(validate53.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err15 = { instancePath: instancePath + "/rules", schemaPath: "#/properties/rules/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err15];
        } else {
          vErrors.push(err15);
        }
        errors++;
      }
    }
    if (data.frames !== void 0) {
      let data8 = data.frames;
      if (Array.isArray(data8)) {
        const len2 = data8.length;
        for (let i2 = 0; i2 < len2; i2++) {
          if (!validate57(data8[i2], { instancePath: instancePath + "/frames/" + i2, parentData: data8, parentDataProperty: i2, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate57.errors : vErrors.concat(validate57.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err16 = { instancePath: instancePath + "/frames", schemaPath: "#/properties/frames/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err16];
        } else {
          vErrors.push(err16);
        }
        errors++;
      }
    }
    if (data.total !== void 0) {
      let data10 = data.total;
      if (data10 && typeof data10 == "object" && !Array.isArray(data10)) {
        if (data10.frames === void 0) {
          const err17 = { instancePath: instancePath + "/total", schemaPath: "#/properties/total/required", keyword: "required", params: { missingProperty: "frames" }, message: "must have required property 'frames'" };
          if (vErrors === null) {
            vErrors = [err17];
          } else {
            vErrors.push(err17);
          }
          errors++;
        }
        if (data10.findings === void 0) {
          const err18 = { instancePath: instancePath + "/total", schemaPath: "#/properties/total/required", keyword: "required", params: { missingProperty: "findings" }, message: "must have required property 'findings'" };
          if (vErrors === null) {
            vErrors = [err18];
          } else {
            vErrors.push(err18);
          }
          errors++;
        }
        if (data10.accept === void 0) {
          const err19 = { instancePath: instancePath + "/total", schemaPath: "#/properties/total/required", keyword: "required", params: { missingProperty: "accept" }, message: "must have required property 'accept'" };
          if (vErrors === null) {
            vErrors = [err19];
          } else {
            vErrors.push(err19);
          }
          errors++;
        }
        if (data10.hold === void 0) {
          const err20 = { instancePath: instancePath + "/total", schemaPath: "#/properties/total/required", keyword: "required", params: { missingProperty: "hold" }, message: "must have required property 'hold'" };
          if (vErrors === null) {
            vErrors = [err20];
          } else {
            vErrors.push(err20);
          }
          errors++;
        }
        if (data10.reject === void 0) {
          const err21 = { instancePath: instancePath + "/total", schemaPath: "#/properties/total/required", keyword: "required", params: { missingProperty: "reject" }, message: "must have required property 'reject'" };
          if (vErrors === null) {
            vErrors = [err21];
          } else {
            vErrors.push(err21);
          }
          errors++;
        }
        if (data10.unread === void 0) {
          const err22 = { instancePath: instancePath + "/total", schemaPath: "#/properties/total/required", keyword: "required", params: { missingProperty: "unread" }, message: "must have required property 'unread'" };
          if (vErrors === null) {
            vErrors = [err22];
          } else {
            vErrors.push(err22);
          }
          errors++;
        }
        if (data10.frames !== void 0) {
          if (!validate58(data10.frames, { instancePath: instancePath + "/total/frames", parentData: data10, parentDataProperty: "frames", rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
            errors = vErrors.length;
          }
        }
        if (data10.findings !== void 0) {
          if (!validate58(data10.findings, { instancePath: instancePath + "/total/findings", parentData: data10, parentDataProperty: "findings", rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
            errors = vErrors.length;
          }
        }
        if (data10.accept !== void 0) {
          if (!validate58(data10.accept, { instancePath: instancePath + "/total/accept", parentData: data10, parentDataProperty: "accept", rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
            errors = vErrors.length;
          }
        }
        if (data10.hold !== void 0) {
          if (!validate58(data10.hold, { instancePath: instancePath + "/total/hold", parentData: data10, parentDataProperty: "hold", rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
            errors = vErrors.length;
          }
        }
        if (data10.reject !== void 0) {
          if (!validate58(data10.reject, { instancePath: instancePath + "/total/reject", parentData: data10, parentDataProperty: "reject", rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
            errors = vErrors.length;
          }
        }
        if (data10.unread !== void 0) {
          if (!validate58(data10.unread, { instancePath: instancePath + "/total/unread", parentData: data10, parentDataProperty: "unread", rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err23 = { instancePath: instancePath + "/total", schemaPath: "#/properties/total/type", keyword: "type", params: { type: "object" }, message: "must be object" };
        if (vErrors === null) {
          vErrors = [err23];
        } else {
          vErrors.push(err23);
        }
        errors++;
      }
    }
  } else {
    const err24 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err24];
    } else {
      vErrors.push(err24);
    }
    errors++;
  }
  validate52.errors = vErrors;
  return errors === 0;
}
validate52.evaluated = { "props": { "formatVersion": true, "tool": true, "faults": true, "rules": true, "frames": true, "total": true }, "dynamicProps": false, "dynamicItems": false };
var frame = validate99;
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
  if (data && typeof data == "object" && !Array.isArray(data)) {
    if (data.file === void 0) {
      const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "file" }, message: "must have required property 'file'" };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.title === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "title" }, message: "must have required property 'title'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.units === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "units" }, message: "must have required property 'units'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.verdict === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "verdict" }, message: "must have required property 'verdict'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.complete === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "complete" }, message: "must have required property 'complete'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.counts === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "counts" }, message: "must have required property 'counts'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.problems === void 0) {
      const err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "problems" }, message: "must have required property 'problems'" };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    if (data.findings === void 0) {
      const err7 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "findings" }, message: "must have required property 'findings'" };
      if (vErrors === null) {
        vErrors = [err7];
      } else {
        vErrors.push(err7);
      }
      errors++;
    }
    if (data.undecided === void 0) {
      const err8 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "undecided" }, message: "must have required property 'undecided'" };
      if (vErrors === null) {
        vErrors = [err8];
      } else {
        vErrors.push(err8);
      }
      errors++;
    }
    if (data.rules === void 0) {
      const err9 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "rules" }, message: "must have required property 'rules'" };
      if (vErrors === null) {
        vErrors = [err9];
      } else {
        vErrors.push(err9);
      }
      errors++;
    }
    if (data.failures === void 0) {
      const err10 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "failures" }, message: "must have required property 'failures'" };
      if (vErrors === null) {
        vErrors = [err10];
      } else {
        vErrors.push(err10);
      }
      errors++;
    }
    if (data.assumed === void 0) {
      const err11 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "assumed" }, message: "must have required property 'assumed'" };
      if (vErrors === null) {
        vErrors = [err11];
      } else {
        vErrors.push(err11);
      }
      errors++;
    }
    if (data.changed === void 0) {
      const err12 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "changed" }, message: "must have required property 'changed'" };
      if (vErrors === null) {
        vErrors = [err12];
      } else {
        vErrors.push(err12);
      }
      errors++;
    }
    if (data.concessions === void 0) {
      const err13 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "concessions" }, message: "must have required property 'concessions'" };
      if (vErrors === null) {
        vErrors = [err13];
      } else {
        vErrors.push(err13);
      }
      errors++;
    }
    if (data.cureTrials === void 0) {
      const err14 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "cureTrials" }, message: "must have required property 'cureTrials'" };
      if (vErrors === null) {
        vErrors = [err14];
      } else {
        vErrors.push(err14);
      }
      errors++;
    }
    if (data.file !== void 0) {
      if (typeof data.file !== "string") {
        const err15 = { instancePath: instancePath + "/file", schemaPath: "#/properties/file/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err15];
        } else {
          vErrors.push(err15);
        }
        errors++;
      }
    }
    if (data.title !== void 0) {
      if (typeof data.title !== "string") {
        const err16 = { instancePath: instancePath + "/title", schemaPath: "#/properties/title/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err16];
        } else {
          vErrors.push(err16);
        }
        errors++;
      }
    }
    if (data.revision !== void 0) {
      if (typeof data.revision !== "string") {
        const err17 = { instancePath: instancePath + "/revision", schemaPath: "#/properties/revision/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err17];
        } else {
          vErrors.push(err17);
        }
        errors++;
      }
    }
    if (data.units !== void 0) {
      let data3 = data.units;
      if (!(data3 === "mm-N-kg" || data3 === "in-lbf-lb")) {
        const err18 = { instancePath: instancePath + "/units", schemaPath: "#/properties/units/enum", keyword: "enum", params: { allowedValues: schema22.properties.units.enum }, message: "must be equal to one of the allowed values" };
        if (vErrors === null) {
          vErrors = [err18];
        } else {
          vErrors.push(err18);
        }
        errors++;
      }
    }
    if (data.verdict !== void 0) {
      let data4 = data.verdict;
      if (!(data4 === "accept" || data4 === "hold" || data4 === "reject" || data4 === "unread")) {
        const err19 = { instancePath: instancePath + "/verdict", schemaPath: "#/properties/verdict/enum", keyword: "enum", params: { allowedValues: schema22.properties.verdict.enum }, message: "must be equal to one of the allowed values" };
        if (vErrors === null) {
          vErrors = [err19];
        } else {
          vErrors.push(err19);
        }
        errors++;
      }
    }
    if (data.complete !== void 0) {
      if (typeof data.complete !== "boolean") {
        const err20 = { instancePath: instancePath + "/complete", schemaPath: "#/properties/complete/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" };
        if (vErrors === null) {
          vErrors = [err20];
        } else {
          vErrors.push(err20);
        }
        errors++;
      }
    }
    if (data.counts !== void 0) {
      let data6 = data.counts;
      if (data6 && typeof data6 == "object" && !Array.isArray(data6)) {
        if (data6.bars === void 0) {
          const err21 = { instancePath: instancePath + "/counts", schemaPath: "#/properties/counts/required", keyword: "required", params: { missingProperty: "bars" }, message: "must have required property 'bars'" };
          if (vErrors === null) {
            vErrors = [err21];
          } else {
            vErrors.push(err21);
          }
          errors++;
        }
        if (data6.joints === void 0) {
          const err22 = { instancePath: instancePath + "/counts", schemaPath: "#/properties/counts/required", keyword: "required", params: { missingProperty: "joints" }, message: "must have required property 'joints'" };
          if (vErrors === null) {
            vErrors = [err22];
          } else {
            vErrors.push(err22);
          }
          errors++;
        }
        if (data6.cases === void 0) {
          const err23 = { instancePath: instancePath + "/counts", schemaPath: "#/properties/counts/required", keyword: "required", params: { missingProperty: "cases" }, message: "must have required property 'cases'" };
          if (vErrors === null) {
            vErrors = [err23];
          } else {
            vErrors.push(err23);
          }
          errors++;
        }
        if (data6.parts === void 0) {
          const err24 = { instancePath: instancePath + "/counts", schemaPath: "#/properties/counts/required", keyword: "required", params: { missingProperty: "parts" }, message: "must have required property 'parts'" };
          if (vErrors === null) {
            vErrors = [err24];
          } else {
            vErrors.push(err24);
          }
          errors++;
        }
        if (data6.bars !== void 0) {
          if (!validate58(data6.bars, { instancePath: instancePath + "/counts/bars", parentData: data6, parentDataProperty: "bars", rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
            errors = vErrors.length;
          }
        }
        if (data6.joints !== void 0) {
          if (!validate58(data6.joints, { instancePath: instancePath + "/counts/joints", parentData: data6, parentDataProperty: "joints", rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
            errors = vErrors.length;
          }
        }
        if (data6.cases !== void 0) {
          if (!validate58(data6.cases, { instancePath: instancePath + "/counts/cases", parentData: data6, parentDataProperty: "cases", rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
            errors = vErrors.length;
          }
        }
        if (data6.parts !== void 0) {
          if (!validate58(data6.parts, { instancePath: instancePath + "/counts/parts", parentData: data6, parentDataProperty: "parts", rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err25 = { instancePath: instancePath + "/counts", schemaPath: "#/properties/counts/type", keyword: "type", params: { type: "object" }, message: "must be object" };
        if (vErrors === null) {
          vErrors = [err25];
        } else {
          vErrors.push(err25);
        }
        errors++;
      }
    }
    if (data.problems !== void 0) {
      let data11 = data.problems;
      if (Array.isArray(data11)) {
        const len0 = data11.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (!validate63(data11[i0], { instancePath: instancePath + "/problems/" + i0, parentData: data11, parentDataProperty: i0, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate63.errors : vErrors.concat(validate63.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err26 = { instancePath: instancePath + "/problems", schemaPath: "#/properties/problems/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err26];
        } else {
          vErrors.push(err26);
        }
        errors++;
      }
    }
    if (data.findings !== void 0) {
      let data13 = data.findings;
      if (Array.isArray(data13)) {
        const len1 = data13.length;
        for (let i1 = 0; i1 < len1; i1++) {
          if (!validate67(data13[i1], { instancePath: instancePath + "/findings/" + i1, parentData: data13, parentDataProperty: i1, rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate67.errors : vErrors.concat(validate67.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err27 = { instancePath: instancePath + "/findings", schemaPath: "#/properties/findings/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err27];
        } else {
          vErrors.push(err27);
        }
        errors++;
      }
    }
    if (data.undecided !== void 0) {
      let data15 = data.undecided;
      if (Array.isArray(data15)) {
        const len2 = data15.length;
        for (let i2 = 0; i2 < len2; i2++) {
          let data16 = data15[i2];
          if (data16 && typeof data16 == "object" && !Array.isArray(data16)) {
            if (data16.why === void 0) {
              const err28 = { instancePath: instancePath + "/undecided/" + i2, schemaPath: "#/properties/undecided/items/required", keyword: "required", params: { missingProperty: "why" }, message: "must have required property 'why'" };
              if (vErrors === null) {
                vErrors = [err28];
              } else {
                vErrors.push(err28);
              }
              errors++;
            }
            if (data16.rules === void 0) {
              const err29 = { instancePath: instancePath + "/undecided/" + i2, schemaPath: "#/properties/undecided/items/required", keyword: "required", params: { missingProperty: "rules" }, message: "must have required property 'rules'" };
              if (vErrors === null) {
                vErrors = [err29];
              } else {
                vErrors.push(err29);
              }
              errors++;
            }
            if (data16.at === void 0) {
              const err30 = { instancePath: instancePath + "/undecided/" + i2, schemaPath: "#/properties/undecided/items/required", keyword: "required", params: { missingProperty: "at" }, message: "must have required property 'at'" };
              if (vErrors === null) {
                vErrors = [err30];
              } else {
                vErrors.push(err30);
              }
              errors++;
            }
            if (data16.holds === void 0) {
              const err31 = { instancePath: instancePath + "/undecided/" + i2, schemaPath: "#/properties/undecided/items/required", keyword: "required", params: { missingProperty: "holds" }, message: "must have required property 'holds'" };
              if (vErrors === null) {
                vErrors = [err31];
              } else {
                vErrors.push(err31);
              }
              errors++;
            }
            if (data16.why !== void 0) {
              if (typeof data16.why !== "string") {
                const err32 = { instancePath: instancePath + "/undecided/" + i2 + "/why", schemaPath: "#/properties/undecided/items/properties/why/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err32];
                } else {
                  vErrors.push(err32);
                }
                errors++;
              }
            }
            if (data16.rules !== void 0) {
              let data18 = data16.rules;
              if (Array.isArray(data18)) {
                const len3 = data18.length;
                for (let i3 = 0; i3 < len3; i3++) {
                  if (typeof data18[i3] !== "string") {
                    const err33 = { instancePath: instancePath + "/undecided/" + i2 + "/rules/" + i3, schemaPath: "#/properties/undecided/items/properties/rules/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err33];
                    } else {
                      vErrors.push(err33);
                    }
                    errors++;
                  }
                }
              } else {
                const err34 = { instancePath: instancePath + "/undecided/" + i2 + "/rules", schemaPath: "#/properties/undecided/items/properties/rules/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                if (vErrors === null) {
                  vErrors = [err34];
                } else {
                  vErrors.push(err34);
                }
                errors++;
              }
            }
            if (data16.at !== void 0) {
              let data20 = data16.at;
              if (Array.isArray(data20)) {
                const len4 = data20.length;
                for (let i4 = 0; i4 < len4; i4++) {
                  if (!validate69(data20[i4], { instancePath: instancePath + "/undecided/" + i2 + "/at/" + i4, parentData: data20, parentDataProperty: i4, rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate69.errors : vErrors.concat(validate69.errors);
                    errors = vErrors.length;
                  }
                }
              } else {
                const err35 = { instancePath: instancePath + "/undecided/" + i2 + "/at", schemaPath: "#/properties/undecided/items/properties/at/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                if (vErrors === null) {
                  vErrors = [err35];
                } else {
                  vErrors.push(err35);
                }
                errors++;
              }
            }
            if (data16.holds !== void 0) {
              if (typeof data16.holds !== "boolean") {
                const err36 = { instancePath: instancePath + "/undecided/" + i2 + "/holds", schemaPath: "#/properties/undecided/items/properties/holds/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" };
                if (vErrors === null) {
                  vErrors = [err36];
                } else {
                  vErrors.push(err36);
                }
                errors++;
              }
            }
          } else {
            const err37 = { instancePath: instancePath + "/undecided/" + i2, schemaPath: "#/properties/undecided/items/type", keyword: "type", params: { type: "object" }, message: "must be object" };
            if (vErrors === null) {
              vErrors = [err37];
            } else {
              vErrors.push(err37);
            }
            errors++;
          }
        }
      } else {
        const err38 = { instancePath: instancePath + "/undecided", schemaPath: "#/properties/undecided/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err38];
        } else {
          vErrors.push(err38);
        }
        errors++;
      }
    }
    if (data.rules !== void 0) {
      let data23 = data.rules;
      if (Array.isArray(data23)) {
        const len5 = data23.length;
        for (let i5 = 0; i5 < len5; i5++) {
          let data24 = data23[i5];
          if (data24 && typeof data24 == "object" && !Array.isArray(data24)) {
            if (data24.rule === void 0) {
              const err39 = { instancePath: instancePath + "/rules/" + i5, schemaPath: "#/properties/rules/items/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'" };
              if (vErrors === null) {
                vErrors = [err39];
              } else {
                vErrors.push(err39);
              }
              errors++;
            }
            if (data24.met === void 0) {
              const err40 = { instancePath: instancePath + "/rules/" + i5, schemaPath: "#/properties/rules/items/required", keyword: "required", params: { missingProperty: "met" }, message: "must have required property 'met'" };
              if (vErrors === null) {
                vErrors = [err40];
              } else {
                vErrors.push(err40);
              }
              errors++;
            }
            if (data24.notMet === void 0) {
              const err41 = { instancePath: instancePath + "/rules/" + i5, schemaPath: "#/properties/rules/items/required", keyword: "required", params: { missingProperty: "notMet" }, message: "must have required property 'notMet'" };
              if (vErrors === null) {
                vErrors = [err41];
              } else {
                vErrors.push(err41);
              }
              errors++;
            }
            if (data24.notApplicable === void 0) {
              const err42 = { instancePath: instancePath + "/rules/" + i5, schemaPath: "#/properties/rules/items/required", keyword: "required", params: { missingProperty: "notApplicable" }, message: "must have required property 'notApplicable'" };
              if (vErrors === null) {
                vErrors = [err42];
              } else {
                vErrors.push(err42);
              }
              errors++;
            }
            if (data24.undecided === void 0) {
              const err43 = { instancePath: instancePath + "/rules/" + i5, schemaPath: "#/properties/rules/items/required", keyword: "required", params: { missingProperty: "undecided" }, message: "must have required property 'undecided'" };
              if (vErrors === null) {
                vErrors = [err43];
              } else {
                vErrors.push(err43);
              }
              errors++;
            }
            if (data24.rule !== void 0) {
              if (typeof data24.rule !== "string") {
                const err44 = { instancePath: instancePath + "/rules/" + i5 + "/rule", schemaPath: "#/properties/rules/items/properties/rule/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err44];
                } else {
                  vErrors.push(err44);
                }
                errors++;
              }
            }
            if (data24.met !== void 0) {
              if (!validate58(data24.met, { instancePath: instancePath + "/rules/" + i5 + "/met", parentData: data24, parentDataProperty: "met", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
                errors = vErrors.length;
              }
            }
            if (data24.notMet !== void 0) {
              if (!validate58(data24.notMet, { instancePath: instancePath + "/rules/" + i5 + "/notMet", parentData: data24, parentDataProperty: "notMet", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
                errors = vErrors.length;
              }
            }
            if (data24.notApplicable !== void 0) {
              if (!validate58(data24.notApplicable, { instancePath: instancePath + "/rules/" + i5 + "/notApplicable", parentData: data24, parentDataProperty: "notApplicable", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
                errors = vErrors.length;
              }
            }
            if (data24.undecided !== void 0) {
              if (!validate58(data24.undecided, { instancePath: instancePath + "/rules/" + i5 + "/undecided", parentData: data24, parentDataProperty: "undecided", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
                errors = vErrors.length;
              }
            }
            if (data24.closest !== void 0) {
              let data30 = data24.closest;
              if (data30 && typeof data30 == "object" && !Array.isArray(data30)) {
                if (data30.at === void 0) {
                  const err45 = { instancePath: instancePath + "/rules/" + i5 + "/closest", schemaPath: "#/properties/rules/items/properties/closest/required", keyword: "required", params: { missingProperty: "at" }, message: "must have required property 'at'" };
                  if (vErrors === null) {
                    vErrors = [err45];
                  } else {
                    vErrors.push(err45);
                  }
                  errors++;
                }
                if (data30.utilisation === void 0) {
                  const err46 = { instancePath: instancePath + "/rules/" + i5 + "/closest", schemaPath: "#/properties/rules/items/properties/closest/required", keyword: "required", params: { missingProperty: "utilisation" }, message: "must have required property 'utilisation'" };
                  if (vErrors === null) {
                    vErrors = [err46];
                  } else {
                    vErrors.push(err46);
                  }
                  errors++;
                }
                if (data30.sense === void 0) {
                  const err47 = { instancePath: instancePath + "/rules/" + i5 + "/closest", schemaPath: "#/properties/rules/items/properties/closest/required", keyword: "required", params: { missingProperty: "sense" }, message: "must have required property 'sense'" };
                  if (vErrors === null) {
                    vErrors = [err47];
                  } else {
                    vErrors.push(err47);
                  }
                  errors++;
                }
                if (data30.measured === void 0) {
                  const err48 = { instancePath: instancePath + "/rules/" + i5 + "/closest", schemaPath: "#/properties/rules/items/properties/closest/required", keyword: "required", params: { missingProperty: "measured" }, message: "must have required property 'measured'" };
                  if (vErrors === null) {
                    vErrors = [err48];
                  } else {
                    vErrors.push(err48);
                  }
                  errors++;
                }
                if (data30.limit === void 0) {
                  const err49 = { instancePath: instancePath + "/rules/" + i5 + "/closest", schemaPath: "#/properties/rules/items/properties/closest/required", keyword: "required", params: { missingProperty: "limit" }, message: "must have required property 'limit'" };
                  if (vErrors === null) {
                    vErrors = [err49];
                  } else {
                    vErrors.push(err49);
                  }
                  errors++;
                }
                if (data30.at !== void 0) {
                  if (!validate69(data30.at, { instancePath: instancePath + "/rules/" + i5 + "/closest/at", parentData: data30, parentDataProperty: "at", rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate69.errors : vErrors.concat(validate69.errors);
                    errors = vErrors.length;
                  }
                }
                if (data30.utilisation !== void 0) {
                  let data32 = data30.utilisation;
                  if (!(typeof data32 == "number" && isFinite(data32))) {
                    const err50 = { instancePath: instancePath + "/rules/" + i5 + "/closest/utilisation", schemaPath: "#/properties/rules/items/properties/closest/properties/utilisation/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                    if (vErrors === null) {
                      vErrors = [err50];
                    } else {
                      vErrors.push(err50);
                    }
                    errors++;
                  }
                }
                if (data30.measured !== void 0) {
                  if (typeof data30.measured !== "string") {
                    const err51 = { instancePath: instancePath + "/rules/" + i5 + "/closest/measured", schemaPath: "#/properties/rules/items/properties/closest/properties/measured/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err51];
                    } else {
                      vErrors.push(err51);
                    }
                    errors++;
                  }
                }
                if (data30.limit !== void 0) {
                  if (typeof data30.limit !== "string") {
                    const err52 = { instancePath: instancePath + "/rules/" + i5 + "/closest/limit", schemaPath: "#/properties/rules/items/properties/closest/properties/limit/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err52];
                    } else {
                      vErrors.push(err52);
                    }
                    errors++;
                  }
                }
                if (data30.sense !== void 0) {
                  let data35 = data30.sense;
                  if (!(data35 === "at most" || data35 === "at least")) {
                    const err53 = { instancePath: instancePath + "/rules/" + i5 + "/closest/sense", schemaPath: "#/properties/rules/items/properties/closest/properties/sense/enum", keyword: "enum", params: { allowedValues: schema22.properties.rules.items.properties.closest.properties.sense.enum }, message: "must be equal to one of the allowed values" };
                    if (vErrors === null) {
                      vErrors = [err53];
                    } else {
                      vErrors.push(err53);
                    }
                    errors++;
                  }
                }
              } else {
                const err54 = { instancePath: instancePath + "/rules/" + i5 + "/closest", schemaPath: "#/properties/rules/items/properties/closest/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                if (vErrors === null) {
                  vErrors = [err54];
                } else {
                  vErrors.push(err54);
                }
                errors++;
              }
            }
          } else {
            const err55 = { instancePath: instancePath + "/rules/" + i5, schemaPath: "#/properties/rules/items/type", keyword: "type", params: { type: "object" }, message: "must be object" };
            if (vErrors === null) {
              vErrors = [err55];
            } else {
              vErrors.push(err55);
            }
            errors++;
          }
        }
      } else {
        const err56 = { instancePath: instancePath + "/rules", schemaPath: "#/properties/rules/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err56];
        } else {
          vErrors.push(err56);
        }
        errors++;
      }
    }
    if (data.failures !== void 0) {
      let data36 = data.failures;
      if (Array.isArray(data36)) {
        const len6 = data36.length;
        for (let i6 = 0; i6 < len6; i6++) {
          let data37 = data36[i6];
          if (data37 && typeof data37 == "object" && !Array.isArray(data37)) {
            if (data37.message === void 0) {
              const err57 = { instancePath: instancePath + "/failures/" + i6, schemaPath: "#/properties/failures/items/required", keyword: "required", params: { missingProperty: "message" }, message: "must have required property 'message'" };
              if (vErrors === null) {
                vErrors = [err57];
              } else {
                vErrors.push(err57);
              }
              errors++;
            }
            if (data37.rule !== void 0) {
              if (typeof data37.rule !== "string") {
                const err58 = { instancePath: instancePath + "/failures/" + i6 + "/rule", schemaPath: "#/properties/failures/items/properties/rule/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err58];
                } else {
                  vErrors.push(err58);
                }
                errors++;
              }
            }
            if (data37.fact !== void 0) {
              if (typeof data37.fact !== "string") {
                const err59 = { instancePath: instancePath + "/failures/" + i6 + "/fact", schemaPath: "#/properties/failures/items/properties/fact/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err59];
                } else {
                  vErrors.push(err59);
                }
                errors++;
              }
            }
            if (data37.at !== void 0) {
              if (!validate69(data37.at, { instancePath: instancePath + "/failures/" + i6 + "/at", parentData: data37, parentDataProperty: "at", rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate69.errors : vErrors.concat(validate69.errors);
                errors = vErrors.length;
              }
            }
            if (data37.message !== void 0) {
              if (typeof data37.message !== "string") {
                const err60 = { instancePath: instancePath + "/failures/" + i6 + "/message", schemaPath: "#/properties/failures/items/properties/message/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err60];
                } else {
                  vErrors.push(err60);
                }
                errors++;
              }
            }
          } else {
            const err61 = { instancePath: instancePath + "/failures/" + i6, schemaPath: "#/properties/failures/items/type", keyword: "type", params: { type: "object" }, message: "must be object" };
            if (vErrors === null) {
              vErrors = [err61];
            } else {
              vErrors.push(err61);
            }
            errors++;
          }
        }
      } else {
        const err62 = { instancePath: instancePath + "/failures", schemaPath: "#/properties/failures/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err62];
        } else {
          vErrors.push(err62);
        }
        errors++;
      }
    }
    if (data.assumed !== void 0) {
      let data42 = data.assumed;
      if (Array.isArray(data42)) {
        const len7 = data42.length;
        for (let i7 = 0; i7 < len7; i7++) {
          if (typeof data42[i7] !== "string") {
            const err63 = { instancePath: instancePath + "/assumed/" + i7, schemaPath: "#/properties/assumed/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
            if (vErrors === null) {
              vErrors = [err63];
            } else {
              vErrors.push(err63);
            }
            errors++;
          }
        }
      } else {
        const err64 = { instancePath: instancePath + "/assumed", schemaPath: "#/properties/assumed/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err64];
        } else {
          vErrors.push(err64);
        }
        errors++;
      }
    }
    if (data.changed !== void 0) {
      let data44 = data.changed;
      if (Array.isArray(data44)) {
        const len8 = data44.length;
        for (let i8 = 0; i8 < len8; i8++) {
          let data45 = data44[i8];
          if (data45 && typeof data45 == "object" && !Array.isArray(data45)) {
            if (data45.what === void 0) {
              const err65 = { instancePath: instancePath + "/changed/" + i8, schemaPath: "#/properties/changed/items/required", keyword: "required", params: { missingProperty: "what" }, message: "must have required property 'what'" };
              if (vErrors === null) {
                vErrors = [err65];
              } else {
                vErrors.push(err65);
              }
              errors++;
            }
            if (data45.value === void 0) {
              const err66 = { instancePath: instancePath + "/changed/" + i8, schemaPath: "#/properties/changed/items/required", keyword: "required", params: { missingProperty: "value" }, message: "must have required property 'value'" };
              if (vErrors === null) {
                vErrors = [err66];
              } else {
                vErrors.push(err66);
              }
              errors++;
            }
            if (data45.usual === void 0) {
              const err67 = { instancePath: instancePath + "/changed/" + i8, schemaPath: "#/properties/changed/items/required", keyword: "required", params: { missingProperty: "usual" }, message: "must have required property 'usual'" };
              if (vErrors === null) {
                vErrors = [err67];
              } else {
                vErrors.push(err67);
              }
              errors++;
            }
            if (data45.by === void 0) {
              const err68 = { instancePath: instancePath + "/changed/" + i8, schemaPath: "#/properties/changed/items/required", keyword: "required", params: { missingProperty: "by" }, message: "must have required property 'by'" };
              if (vErrors === null) {
                vErrors = [err68];
              } else {
                vErrors.push(err68);
              }
              errors++;
            }
            if (data45.parts === void 0) {
              const err69 = { instancePath: instancePath + "/changed/" + i8, schemaPath: "#/properties/changed/items/required", keyword: "required", params: { missingProperty: "parts" }, message: "must have required property 'parts'" };
              if (vErrors === null) {
                vErrors = [err69];
              } else {
                vErrors.push(err69);
              }
              errors++;
            }
            for (const key0 in data45) {
              if (!(key0 === "what" || key0 === "value" || key0 === "usual" || key0 === "by" || key0 === "parts")) {
                const err70 = { instancePath: instancePath + "/changed/" + i8, schemaPath: "#/properties/changed/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
                if (vErrors === null) {
                  vErrors = [err70];
                } else {
                  vErrors.push(err70);
                }
                errors++;
              }
            }
            if (data45.what !== void 0) {
              if (typeof data45.what !== "string") {
                const err71 = { instancePath: instancePath + "/changed/" + i8 + "/what", schemaPath: "#/properties/changed/items/properties/what/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err71];
                } else {
                  vErrors.push(err71);
                }
                errors++;
              }
            }
            if (data45.value !== void 0) {
              if (typeof data45.value !== "string") {
                const err72 = { instancePath: instancePath + "/changed/" + i8 + "/value", schemaPath: "#/properties/changed/items/properties/value/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err72];
                } else {
                  vErrors.push(err72);
                }
                errors++;
              }
            }
            if (data45.usual !== void 0) {
              if (typeof data45.usual !== "string") {
                const err73 = { instancePath: instancePath + "/changed/" + i8 + "/usual", schemaPath: "#/properties/changed/items/properties/usual/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err73];
                } else {
                  vErrors.push(err73);
                }
                errors++;
              }
            }
            if (data45.by !== void 0) {
              let data49 = data45.by;
              if (!(data49 === "house" || data49 === "frame" || data49 === "part")) {
                const err74 = { instancePath: instancePath + "/changed/" + i8 + "/by", schemaPath: "#/properties/changed/items/properties/by/enum", keyword: "enum", params: { allowedValues: schema22.properties.changed.items.properties.by.enum }, message: "must be equal to one of the allowed values" };
                if (vErrors === null) {
                  vErrors = [err74];
                } else {
                  vErrors.push(err74);
                }
                errors++;
              }
            }
            if (data45.parts !== void 0) {
              let data50 = data45.parts;
              if (Array.isArray(data50)) {
                const len9 = data50.length;
                for (let i9 = 0; i9 < len9; i9++) {
                  if (typeof data50[i9] !== "string") {
                    const err75 = { instancePath: instancePath + "/changed/" + i8 + "/parts/" + i9, schemaPath: "#/properties/changed/items/properties/parts/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err75];
                    } else {
                      vErrors.push(err75);
                    }
                    errors++;
                  }
                }
              } else {
                const err76 = { instancePath: instancePath + "/changed/" + i8 + "/parts", schemaPath: "#/properties/changed/items/properties/parts/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                if (vErrors === null) {
                  vErrors = [err76];
                } else {
                  vErrors.push(err76);
                }
                errors++;
              }
            }
          } else {
            const err77 = { instancePath: instancePath + "/changed/" + i8, schemaPath: "#/properties/changed/items/type", keyword: "type", params: { type: "object" }, message: "must be object" };
            if (vErrors === null) {
              vErrors = [err77];
            } else {
              vErrors.push(err77);
            }
            errors++;
          }
        }
      } else {
        const err78 = { instancePath: instancePath + "/changed", schemaPath: "#/properties/changed/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err78];
        } else {
          vErrors.push(err78);
        }
        errors++;
      }
    }
    if (data.cureTrials !== void 0) {
      let data52 = data.cureTrials;
      if (data52 && typeof data52 == "object" && !Array.isArray(data52)) {
        if (data52.tried === void 0) {
          const err79 = { instancePath: instancePath + "/cureTrials", schemaPath: "#/properties/cureTrials/required", keyword: "required", params: { missingProperty: "tried" }, message: "must have required property 'tried'" };
          if (vErrors === null) {
            vErrors = [err79];
          } else {
            vErrors.push(err79);
          }
          errors++;
        }
        if (data52.untried === void 0) {
          const err80 = { instancePath: instancePath + "/cureTrials", schemaPath: "#/properties/cureTrials/required", keyword: "required", params: { missingProperty: "untried" }, message: "must have required property 'untried'" };
          if (vErrors === null) {
            vErrors = [err80];
          } else {
            vErrors.push(err80);
          }
          errors++;
        }
        for (const key1 in data52) {
          if (!(key1 === "tried" || key1 === "untried")) {
            const err81 = { instancePath: instancePath + "/cureTrials", schemaPath: "#/properties/cureTrials/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties" };
            if (vErrors === null) {
              vErrors = [err81];
            } else {
              vErrors.push(err81);
            }
            errors++;
          }
        }
        if (data52.tried !== void 0) {
          if (!validate58(data52.tried, { instancePath: instancePath + "/cureTrials/tried", parentData: data52, parentDataProperty: "tried", rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
            errors = vErrors.length;
          }
        }
        if (data52.untried !== void 0) {
          if (!validate58(data52.untried, { instancePath: instancePath + "/cureTrials/untried", parentData: data52, parentDataProperty: "untried", rootData, dynamicAnchors })) {
            vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err82 = { instancePath: instancePath + "/cureTrials", schemaPath: "#/properties/cureTrials/type", keyword: "type", params: { type: "object" }, message: "must be object" };
        if (vErrors === null) {
          vErrors = [err82];
        } else {
          vErrors.push(err82);
        }
        errors++;
      }
    }
    if (data.concessions !== void 0) {
      let data55 = data.concessions;
      if (Array.isArray(data55)) {
        const len10 = data55.length;
        for (let i10 = 0; i10 < len10; i10++) {
          if (typeof data55[i10] !== "string") {
            const err83 = { instancePath: instancePath + "/concessions/" + i10, schemaPath: "#/properties/concessions/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
            if (vErrors === null) {
              vErrors = [err83];
            } else {
              vErrors.push(err83);
            }
            errors++;
          }
        }
      } else {
        const err84 = { instancePath: instancePath + "/concessions", schemaPath: "#/properties/concessions/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err84];
        } else {
          vErrors.push(err84);
        }
        errors++;
      }
    }
  } else {
    const err85 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err85];
    } else {
      vErrors.push(err85);
    }
    errors++;
  }
  validate99.errors = vErrors;
  return errors === 0;
}
validate99.evaluated = { "props": { "file": true, "title": true, "revision": true, "units": true, "verdict": true, "complete": true, "counts": true, "problems": true, "findings": true, "undecided": true, "rules": true, "failures": true, "assumed": true, "changed": true, "cureTrials": true, "concessions": true }, "dynamicProps": false, "dynamicItems": false };
var ruleCard = validate115;
function validate115(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate115.evaluated;
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
    if (data.title === void 0) {
      const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "title" }, message: "must have required property 'title'" };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.group === void 0) {
      const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "group" }, message: "must have required property 'group'" };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.level === void 0) {
      const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "level" }, message: "must have required property 'level'" };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.basis === void 0) {
      const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "basis" }, message: "must have required property 'basis'" };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.messages === void 0) {
      const err5 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "messages" }, message: "must have required property 'messages'" };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.criteria === void 0) {
      const err6 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "criteria" }, message: "must have required property 'criteria'" };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    if (data.id !== void 0) {
      if (typeof data.id !== "string") {
        const err7 = { instancePath: instancePath + "/id", schemaPath: "#/properties/id/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err7];
        } else {
          vErrors.push(err7);
        }
        errors++;
      }
    }
    if (data.title !== void 0) {
      if (typeof data.title !== "string") {
        const err8 = { instancePath: instancePath + "/title", schemaPath: "#/properties/title/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err8];
        } else {
          vErrors.push(err8);
        }
        errors++;
      }
    }
    if (data.group !== void 0) {
      if (typeof data.group !== "string") {
        const err9 = { instancePath: instancePath + "/group", schemaPath: "#/properties/group/type", keyword: "type", params: { type: "string" }, message: "must be string" };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
    }
    if (data.level !== void 0) {
      if (!validate54(data.level, { instancePath: instancePath + "/level", parentData: data, parentDataProperty: "level", rootData, dynamicAnchors })) {
        vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.basis !== void 0) {
      let data4 = data.basis;
      if (Array.isArray(data4)) {
        const len0 = data4.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (typeof data4[i0] !== "string") {
            const err10 = { instancePath: instancePath + "/basis/" + i0, schemaPath: "#/properties/basis/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
            if (vErrors === null) {
              vErrors = [err10];
            } else {
              vErrors.push(err10);
            }
            errors++;
          }
        }
      } else {
        const err11 = { instancePath: instancePath + "/basis", schemaPath: "#/properties/basis/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err11];
        } else {
          vErrors.push(err11);
        }
        errors++;
      }
    }
    if (data.messages !== void 0) {
      let data6 = data.messages;
      if (data6 && typeof data6 == "object" && !Array.isArray(data6)) {
        for (const key0 in data6) {
          let data7 = data6[key0];
          if (data7 && typeof data7 == "object" && !Array.isArray(data7)) {
            if (data7.text === void 0) {
              const err12 = { instancePath: instancePath + "/messages/" + key0.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/messages/additionalProperties/required", keyword: "required", params: { missingProperty: "text" }, message: "must have required property 'text'" };
              if (vErrors === null) {
                vErrors = [err12];
              } else {
                vErrors.push(err12);
              }
              errors++;
            }
            if (data7.text !== void 0) {
              if (typeof data7.text !== "string") {
                const err13 = { instancePath: instancePath + "/messages/" + key0.replace(/~/g, "~0").replace(/\//g, "~1") + "/text", schemaPath: "#/properties/messages/additionalProperties/properties/text/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err13];
                } else {
                  vErrors.push(err13);
                }
                errors++;
              }
            }
            if (data7.advice !== void 0) {
              if (typeof data7.advice !== "string") {
                const err14 = { instancePath: instancePath + "/messages/" + key0.replace(/~/g, "~0").replace(/\//g, "~1") + "/advice", schemaPath: "#/properties/messages/additionalProperties/properties/advice/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err14];
                } else {
                  vErrors.push(err14);
                }
                errors++;
              }
            }
          } else {
            const err15 = { instancePath: instancePath + "/messages/" + key0.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/messages/additionalProperties/type", keyword: "type", params: { type: "object" }, message: "must be object" };
            if (vErrors === null) {
              vErrors = [err15];
            } else {
              vErrors.push(err15);
            }
            errors++;
          }
        }
      } else {
        const err16 = { instancePath: instancePath + "/messages", schemaPath: "#/properties/messages/type", keyword: "type", params: { type: "object" }, message: "must be object" };
        if (vErrors === null) {
          vErrors = [err16];
        } else {
          vErrors.push(err16);
        }
        errors++;
      }
    }
    if (data.criteria !== void 0) {
      let data10 = data.criteria;
      if (Array.isArray(data10)) {
        const len1 = data10.length;
        for (let i1 = 0; i1 < len1; i1++) {
          let data11 = data10[i1];
          if (data11 && typeof data11 == "object" && !Array.isArray(data11)) {
            if (data11.name === void 0) {
              const err17 = { instancePath: instancePath + "/criteria/" + i1, schemaPath: "#/properties/criteria/items/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
              if (vErrors === null) {
                vErrors = [err17];
              } else {
                vErrors.push(err17);
              }
              errors++;
            }
            if (data11.quantity === void 0) {
              const err18 = { instancePath: instancePath + "/criteria/" + i1, schemaPath: "#/properties/criteria/items/required", keyword: "required", params: { missingProperty: "quantity" }, message: "must have required property 'quantity'" };
              if (vErrors === null) {
                vErrors = [err18];
              } else {
                vErrors.push(err18);
              }
              errors++;
            }
            if (data11.standard === void 0) {
              const err19 = { instancePath: instancePath + "/criteria/" + i1, schemaPath: "#/properties/criteria/items/required", keyword: "required", params: { missingProperty: "standard" }, message: "must have required property 'standard'" };
              if (vErrors === null) {
                vErrors = [err19];
              } else {
                vErrors.push(err19);
              }
              errors++;
            }
            if (data11.about === void 0) {
              const err20 = { instancePath: instancePath + "/criteria/" + i1, schemaPath: "#/properties/criteria/items/required", keyword: "required", params: { missingProperty: "about" }, message: "must have required property 'about'" };
              if (vErrors === null) {
                vErrors = [err20];
              } else {
                vErrors.push(err20);
              }
              errors++;
            }
            if (data11.basis === void 0) {
              const err21 = { instancePath: instancePath + "/criteria/" + i1, schemaPath: "#/properties/criteria/items/required", keyword: "required", params: { missingProperty: "basis" }, message: "must have required property 'basis'" };
              if (vErrors === null) {
                vErrors = [err21];
              } else {
                vErrors.push(err21);
              }
              errors++;
            }
            if (data11.name !== void 0) {
              if (typeof data11.name !== "string") {
                const err22 = { instancePath: instancePath + "/criteria/" + i1 + "/name", schemaPath: "#/properties/criteria/items/properties/name/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err22];
                } else {
                  vErrors.push(err22);
                }
                errors++;
              }
            }
            if (data11.quantity !== void 0) {
              if (typeof data11.quantity !== "string") {
                const err23 = { instancePath: instancePath + "/criteria/" + i1 + "/quantity", schemaPath: "#/properties/criteria/items/properties/quantity/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err23];
                } else {
                  vErrors.push(err23);
                }
                errors++;
              }
            }
            if (data11.standard !== void 0) {
              if (typeof data11.standard !== "string") {
                const err24 = { instancePath: instancePath + "/criteria/" + i1 + "/standard", schemaPath: "#/properties/criteria/items/properties/standard/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err24];
                } else {
                  vErrors.push(err24);
                }
                errors++;
              }
            }
            if (data11.within !== void 0) {
              let data15 = data11.within;
              if (Array.isArray(data15)) {
                if (data15.length > 2) {
                  const err25 = { instancePath: instancePath + "/criteria/" + i1 + "/within", schemaPath: "#/properties/criteria/items/properties/within/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
                  if (vErrors === null) {
                    vErrors = [err25];
                  } else {
                    vErrors.push(err25);
                  }
                  errors++;
                }
                if (data15.length < 2) {
                  const err26 = { instancePath: instancePath + "/criteria/" + i1 + "/within", schemaPath: "#/properties/criteria/items/properties/within/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
                  if (vErrors === null) {
                    vErrors = [err26];
                  } else {
                    vErrors.push(err26);
                  }
                  errors++;
                }
                const len2 = data15.length;
                for (let i2 = 0; i2 < len2; i2++) {
                  if (typeof data15[i2] !== "string") {
                    const err27 = { instancePath: instancePath + "/criteria/" + i1 + "/within/" + i2, schemaPath: "#/properties/criteria/items/properties/within/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err27];
                    } else {
                      vErrors.push(err27);
                    }
                    errors++;
                  }
                }
              } else {
                const err28 = { instancePath: instancePath + "/criteria/" + i1 + "/within", schemaPath: "#/properties/criteria/items/properties/within/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                if (vErrors === null) {
                  vErrors = [err28];
                } else {
                  vErrors.push(err28);
                }
                errors++;
              }
            }
            if (data11.about !== void 0) {
              if (typeof data11.about !== "string") {
                const err29 = { instancePath: instancePath + "/criteria/" + i1 + "/about", schemaPath: "#/properties/criteria/items/properties/about/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err29];
                } else {
                  vErrors.push(err29);
                }
                errors++;
              }
            }
            if (data11.basis !== void 0) {
              if (typeof data11.basis !== "string") {
                const err30 = { instancePath: instancePath + "/criteria/" + i1 + "/basis", schemaPath: "#/properties/criteria/items/properties/basis/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err30];
                } else {
                  vErrors.push(err30);
                }
                errors++;
              }
            }
          } else {
            const err31 = { instancePath: instancePath + "/criteria/" + i1, schemaPath: "#/properties/criteria/items/type", keyword: "type", params: { type: "object" }, message: "must be object" };
            if (vErrors === null) {
              vErrors = [err31];
            } else {
              vErrors.push(err31);
            }
            errors++;
          }
        }
      } else {
        const err32 = { instancePath: instancePath + "/criteria", schemaPath: "#/properties/criteria/type", keyword: "type", params: { type: "array" }, message: "must be array" };
        if (vErrors === null) {
          vErrors = [err32];
        } else {
          vErrors.push(err32);
        }
        errors++;
      }
    }
  } else {
    const err33 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
    if (vErrors === null) {
      vErrors = [err33];
    } else {
      vErrors.push(err33);
    }
    errors++;
  }
  validate115.errors = vErrors;
  return errors === 0;
}
validate115.evaluated = { "props": { "id": true, "title": true, "group": true, "level": true, "basis": true, "messages": true, "criteria": true }, "dynamicProps": false, "dynamicItems": false };
export {
  frame,
  ruleCard,
  whole
};
