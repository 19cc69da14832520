/** What the page of a comparison has beyond an inspection sheet. */
export const COMPARE_STYLE = `
.head .name{flex:2 1 18rem}.head .verdict{flex:1 1 13rem;min-width:0;overflow-wrap:anywhere}
@media screen and (min-width:901px){.head{flex-wrap:nowrap}}
.both{margin-top:1rem}
.both .view,.risen{margin:0;background:#fff;border:1px solid var(--rule)}
.both .legend{list-style:none;padding:0;margin:.5rem 0;gap:.3rem 1.3rem;font-size:.88rem}
.both [data-view=narrow]{display:none}
@media screen and (max-width:600px){.both [data-view=narrow]{display:block}.both [data-view=isometric]{display:none}}
.sample{width:30px;height:14px;vertical-align:-2px}
.risen{position:sticky;top:.6rem}
.findings h2:first-child{margin-top:2.2rem}
.findings h3{margin-top:1.3rem}
.desk h3:first-child{margin-top:0}
.bars td:first-child{width:5rem}
.record .wide{overflow-wrap:normal}.record tbody td{overflow-wrap:anywhere;min-width:6.5em}.record tbody td:last-child{min-width:18em}.record tbody th[scope=row]{min-width:3em}
.pair{width:auto;min-width:26rem;max-width:100%}
.pair td{padding-right:2rem}
@page{@bottom-left{content:"Comparison of two revisions";font:8pt system-ui,Arial,sans-serif;color:#545d63}}
@media screen and (max-width:900px){.pair{min-width:0}}
@media print{.head .verdict{min-width:0;max-width:54mm}.risen{position:static}.both .legend{display:flex}.risen svg{max-height:95mm}}
`;
