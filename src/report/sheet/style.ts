/** How a sheet looks on a screen and on paper. Colours come with words or shapes: it reads in grey and by every eye. */
export const STYLE = `
:root{--paper:#fbfaf5;--ink:#20262b;--soft:#545d63;--rule:#cfcabb;--band:#f0ede2;--reject:#96270f;--hold:#7a4f00;--note:#335a78;--accept:#2f6427}
*{box-sizing:border-box}
html{color-scheme:light;scroll-padding-top:1rem}
body{margin:0;background:var(--paper);color:var(--ink);font:15px/1.45 system-ui,"Segoe UI","Liberation Sans",Arial,sans-serif;font-variant-numeric:tabular-nums}
h1,h2,h3{font-family:"Iowan Old Style","Palatino Linotype",Palatino,"URW Palladio L",Georgia,serif;font-weight:600;line-height:1.2}
h1{font-size:1.7rem;margin:.1rem 0 .25rem;overflow-wrap:anywhere}
h2{font-size:1.25rem;margin:2.2rem 0 .5rem;padding-bottom:.2rem;border-bottom:2px solid var(--ink)}
h3{font-size:1.02rem;margin:1.2rem 0 .4rem}
h4{font-size:.98rem;margin:0 0 .35rem;font-weight:600}
p{margin:.35rem 0}
code{font-family:ui-monospace,"Liberation Mono",Menlo,Consolas,monospace;font-size:.88em}
.head,main{max-width:1500px;margin:0 auto;padding:0 1.2rem}
.head{display:flex;gap:1.5rem;justify-content:space-between;align-items:stretch;padding-top:1rem;flex-wrap:wrap}
.kind{font-size:.78rem;letter-spacing:.14em;text-transform:uppercase;color:var(--soft);margin:0}
.what{color:var(--soft);margin:0;overflow-wrap:anywhere}
.name{flex:1 1 22rem;min-width:0}
.verdict{border:2px solid;border-left-width:10px;padding:.45rem .9rem;min-width:17rem;background:#fff}
.verdict p{margin:0}
.verdict strong{font-size:1.35rem;letter-spacing:.08em}
.verdict .tally{color:var(--soft);font-size:.85rem;margin-top:.2rem}
.v-reject,.v-unread{border-color:var(--reject)}.v-reject strong,.v-unread strong{color:var(--reject)}
.v-hold{border-color:var(--hold)}.v-hold strong{color:var(--hold)}
.v-accept{border-color:var(--accept)}.v-accept strong{color:var(--accept)}
.desk{display:grid;grid-template-columns:minmax(0,1.35fr) minmax(0,1fr);gap:1.6rem;align-items:start;margin-top:1rem}
.board{position:sticky;top:.6rem}
.board .view{margin:0;background:#fff;border:1px solid var(--rule)}
.view svg{display:block;width:100%;height:auto}
.view[data-view=isometric] svg{max-height:66vh}
figcaption{font-size:.8rem;color:var(--soft);padding:.15rem .6rem .3rem}
.views{display:grid;grid-template-columns:repeat(3,minmax(0,1fr));gap:.5rem;margin-top:.5rem}
.views svg{height:9.5rem}
span.step{white-space:nowrap;margin-right:.5em}svg.step{vertical-align:-.1em}
.key{font-size:.82rem;color:var(--soft)}
.b,.balloon{display:inline-block;min-width:1.55em;padding:0 .35em;border:2px solid var(--ink);border-radius:1em;background:#fff;color:var(--ink);font:700 .8rem/1.45 system-ui,Arial,sans-serif;text-align:center}
.b.strong,.balloon.w-reject{background:var(--ink);color:#fff}
.b.light,.balloon.w-note,.balloon.w-conceded{border:1px dashed var(--ink)}
.findings h2:first-child{margin-top:0}
@media screen{.many .part{content-visibility:auto;contain-intrinsic-size:auto 13rem}}
.part{border-top:1px solid var(--rule);padding:.2rem 0 .3rem}
.finding,.outcome{margin:.4rem 0 .9rem;padding:.5rem .8rem .5rem .9rem;background:#fff;border:1px solid var(--rule);border-left:6px solid var(--note)}
.finding.l-reject{border-left-color:var(--reject)}
.finding.l-hold{border-left-color:var(--hold)}
.finding.l-conceded{border-left:6px double var(--soft)}
.outcome{margin-bottom:.4rem}.outcome p{font-size:.9rem}
.outcome.l-met{border-left-color:var(--accept)}.outcome.l-undecided{border-left:6px dashed var(--soft)}
.outcomes:has(.outcome:not([hidden])){border-top:1px solid var(--rule)}
.level{letter-spacing:.06em;font-size:.86em}
.l-reject .level{color:var(--reject)}.l-hold .level{color:var(--hold)}.l-note .level{color:var(--note)}.l-conceded .level,.l-undecided .level{color:var(--soft)}.l-met .level{color:var(--accept)}
.no{color:var(--soft);font-weight:400}
.numbers{display:flex;flex-wrap:wrap;gap:.15rem 1.6rem;margin:.3rem 0;font-size:.9rem}
.numbers dt,.block dt{font-size:.74rem;color:var(--soft)}
.numbers dd,.block dd{margin:0}
.numbers .long{flex:1 1 100%}
.use{vertical-align:middle;margin-left:.3rem;width:90px;height:10px}
.check{margin:.5rem 0}
.check>svg{display:block;max-width:100%;height:auto}
.check>svg.picture{width:30rem}
.check>svg:not(.picture){width:17rem;border:1px solid var(--rule)}
.check.tool>svg{width:100%;max-width:34rem;border:0}
.check.whole>svg{width:26rem}
.check.near{float:right;margin:0 0 .4rem 1rem;max-width:50%}
.beside{display:flex;flex-wrap:wrap;gap:.2rem 1.2rem;align-items:flex-start}
.beside .check.near{float:none;margin:.5rem 0;max-width:none;flex:0 1 17rem}
.ends{display:flex;flex-wrap:wrap;gap:.2rem 1rem;align-items:flex-start;margin:.5rem 0}
.ends .check.near{float:none;margin:0;max-width:none;flex:0 1 15rem}
.faces{display:flex;flex-wrap:wrap;gap:.5rem;flex:1 1 9rem}
.face{margin:0;width:8.5rem}
.face svg{display:block;width:100%;height:auto;background:#fff;border:1px solid var(--rule)}
.face figcaption{padding-left:0}
.finding{display:flow-root}
.finding,.outcome,.part h3,.open li,.key{overflow-wrap:anywhere}
.check figcaption{padding-left:0}
.forces{width:auto}
.cures{display:flow-root;background:var(--band);padding:.3rem .7rem;margin:.45rem 0;font-size:.92rem}
.cures p{font-size:.8rem;color:var(--soft);margin:0}
.cures ul{margin:.1rem 0;padding-left:1.1rem}
.pair{display:flex;clear:both;gap:.5rem;margin:.3rem 0}
.cures .pair figure{margin:0;flex:0 1 15rem;background:#fff;border:1px solid var(--rule);min-width:0}
.pair svg{display:block;width:100%;height:auto}
.mend{font-size:.92rem}
.concession{font-style:italic}
.trace{font-size:.8rem;color:var(--soft);overflow-wrap:anywhere}
table{border-collapse:collapse;width:100%;font-size:.88rem;margin:.5rem 0 1rem}
th,td{text-align:left;padding:.22rem .6rem .22rem 0;border-bottom:1px solid var(--rule);vertical-align:top;font-weight:400}
thead th{font-size:.76rem;color:var(--soft);border-bottom:1px solid var(--ink)}
.num{text-align:right;white-space:nowrap}
.checks td.num{text-align:left}
tr.group th{font-family:"Iowan Old Style","Palatino Linotype",Palatino,Georgia,serif;font-weight:600;padding-top:.7rem;border-bottom-color:var(--ink)}
tr.not-met td:nth-child(2),td.not-met{font-weight:700}
tr th span{color:var(--soft)}
.wide{overflow-x:auto}
th[scope=row],.path td:nth-child(2),.loads td:last-child:not(.num),figcaption,.record,.path>p{overflow-wrap:anywhere}
tbody th[scope=row]{min-width:6em}
.record ul,.open ul{padding-left:1.2rem;font-size:.92rem}
.block{border:2px solid var(--ink);background:#fff;margin:1.2rem 0 2rem;display:grid;grid-template-columns:1.5fr 1fr}
.block dl{display:grid;grid-template-columns:2fr 1fr 1fr;margin:0}
.block dl div{border-right:1px solid var(--rule);border-bottom:1px solid var(--rule);padding:.25rem .6rem;min-width:0;overflow-wrap:anywhere}
.block dl .w{grid-column:1/-1}
.block dl .t{grid-column:1}
.sign{margin:0;height:100%;table-layout:fixed}
.sign th:nth-child(1){width:40%}.sign th:nth-child(2){width:22%}
.sign th{padding:.25rem .6rem;border-right:1px solid var(--rule)}
.sign td{height:4.6rem;border-right:1px solid var(--rule);border-bottom:0}
.turning .view[data-view=isometric]{display:none}
.stage{position:relative;background:#fff;border:1px solid var(--rule);overflow:hidden}
.stage canvas{display:block;width:100%;height:min(56vh,44rem);touch-action:none;cursor:grab}
.stage canvas:active{cursor:grabbing}
.stage canvas:focus-visible{outline:3px solid var(--note);outline-offset:-3px}
.pin{position:absolute;left:0;top:0;min-width:22px;height:20px;padding:0 5px;border:2px solid var(--ink);border-radius:11px;background:#fff;color:var(--ink);font:700 11px/16px system-ui,Arial,sans-serif;cursor:pointer}
.pin.strong{background:var(--ink);color:#fff}
.pin.light{border:1px dashed var(--ink)}
.pin.chosen{box-shadow:0 0 0 4px #f0b429;z-index:2}
.tag{position:absolute;left:0;top:0;padding:0 .3em;background:#fffffff0;border:1px solid var(--rule);font-size:.78rem;white-space:nowrap;pointer-events:none}
.way{display:grid;grid-template-columns:minmax(0,1.2fr) minmax(0,1fr);gap:1.2rem;align-items:start}
.way figure{margin:0;background:#fff;border:1px solid var(--rule)}
.path .bent{margin-top:.6rem}
.tools{font-size:.85rem;margin-bottom:.4rem}
.row{display:flex;flex-wrap:wrap;gap:.3rem .5rem;align-items:center;margin:.2rem 0}
.tools button,.tools select,.filter select{font:inherit;color:inherit;background:#fff;border:1px solid #8f9488;border-radius:2px;padding:.18rem .55rem;max-width:100%}
.tools select{max-width:19rem}
.tools button{cursor:pointer}
.tools button:hover{background:var(--band)}
:focus-visible{outline:3px solid var(--note);outline-offset:1px}
.tools input[type=range]{width:8.5rem}
.legend{display:flex;flex-wrap:wrap;gap:.2rem .9rem;font-size:.82rem;min-height:1.4em}
.legend:empty{min-height:0}
.swatch{display:inline-block;width:1.1em;height:.9em;border:1px solid var(--ink);vertical-align:-.08em}
.readout{font-size:.85rem;color:var(--soft);min-height:1.4em;margin:.25rem 0}
.readout b{color:var(--ink)}
.pick{font:inherit;font-weight:700;min-width:2.1em;margin-right:.2rem;padding:.05rem .45rem;border:1px solid #8f9488;border-radius:2px;background:var(--band);color:var(--ink);cursor:pointer}
.pick[aria-pressed=true]{background:#f0b429;border-color:var(--ink)}
.finding.chosen{outline:2px solid var(--ink)}
.filter{display:flex;flex-wrap:wrap;gap:.25rem .9rem;font-size:.85rem;align-items:center;margin:.2rem 0 .6rem}
.kept{white-space:nowrap}
[hidden]{display:none!important}
@media screen and (max-width:900px){.way{grid-template-columns:minmax(0,1fr)}.desk{grid-template-columns:minmax(0,1fr)}.board{position:static}.turning .desk{display:flex;flex-direction:column;align-items:stretch;gap:0}.turning .board,.turning .easel{display:contents}.turning .findings{order:1;min-width:0}.turning .views,.turning .key{order:2}.turning .stage{position:sticky;top:0;z-index:3}.turning .stage canvas{height:40vh}html:has(.turning){scroll-padding-top:42vh}.views{grid-template-columns:repeat(auto-fill,minmax(min(15rem,100%),1fr))}.views svg{height:auto}.block{grid-template-columns:1fr}.block dl{grid-template-columns:1fr 1fr}.block dl .t{grid-column:1/-1}.head,main{padding:0 .8rem}}
@media screen and (max-width:600px){.board [data-mark]:has(rect){transform-box:fill-box;transform-origin:center}.view[data-view=isometric] [data-mark]:has(rect){transform:scale(1.9)}.views [data-mark]:has(rect){transform:scale(.75)}}
.two{columns:22rem 2;column-gap:2rem}
@page{margin:14mm 13mm 16mm;@bottom-left{content:"Inspection sheet";font:8pt system-ui,Arial,sans-serif;color:#545d63}@bottom-right{content:"page " counter(page) " of " counter(pages);font:8pt system-ui,Arial,sans-serif;color:#545d63}}
@media print{
.turning .view[data-view=isometric]{display:block}
[hidden]{display:revert!important}
html{font-size:12.5px}
body{background:#fff;font-size:9.2pt}
.head,main{max-width:none;padding:0 1px}
.desk{display:block}
.board{position:static}
.view[data-view=isometric] svg{max-height:98mm}
.key{line-height:1.7;break-inside:avoid;orphans:9;widows:9}.findings h2:first-child{margin-top:1.2rem}
.check.near>svg{width:48mm!important}
.desk table,.checks table,.bars table,.path table{font-size:8pt}
.trace{font-size:7.5pt}
.views svg{height:38mm}
.finding>h4,.finding>p,.numbers,.pair,.cures li,.beside,.ends,.part>h3,.block,tr,figure{break-inside:avoid}
h2,h3,.finding>h4,.cures>p,.checks>p,.bars>p,tr.group{break-after:avoid}
.finding>.trace,.finding>.mend{break-before:avoid}
p,li{orphans:3;widows:3}
.checks th:nth-child(1){width:45%}.checks th:nth-child(2){width:17%}.checks th:nth-child(4){width:15%}.use{width:15mm;height:1.7mm}
.checks td,.checks th,.bars td,.path td,.path tbody th{padding-top:.1rem;padding-bottom:.1rem}
.path svg{max-height:82mm}
.filters,.easel,.outcomes{display:none}
.pick{border:0;background:none;padding:0;min-width:0;font-weight:400}
.finding.chosen{outline:0}
.wide{overflow:visible}
.name{flex-basis:16rem}.verdict{min-width:0;max-width:62mm}
.cures .pair figure{flex-basis:44mm}
.check.whole>svg{width:62mm}.check>svg.picture{width:110mm}
.bars th,.bars td{white-space:nowrap;padding-right:.3rem}.bars tbody th{white-space:normal}
.bars thead th{vertical-align:bottom}
.bars thead code{writing-mode:vertical-rl;transform:rotate(180deg)}
.part{padding:0}.finding{margin:.3rem 0 .5rem}
.block{grid-template-columns:1fr}.sign td{height:17mm}
*{-webkit-print-color-adjust:exact;print-color-adjust:exact}
}
`;
