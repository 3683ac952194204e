/** Style of a checklist: a grid of box, words and numbers; on a phone the numbers stand below the words. */
export const checklistStyle = `
.sheet{margin:2.5rem 0}
.sheet .about{margin:.25rem 0}
.write-ins{display:flex;flex-wrap:wrap;gap:.25rem 1.25rem;margin:.5rem 0}
.write-ins .write-in{flex:1 1 12rem}
.steps{list-style:none;counter-reset:step;margin:1rem 0;padding:0}
.steps li{counter-increment:step;display:grid;grid-template-columns:1.5rem minmax(0,1fr) 15rem;gap:0 .75rem;padding:.55rem 0;border-top:1px solid var(--grid)}
.steps li>input{width:1.1rem;height:1.1rem;margin:.2rem 0 0;accent-color:var(--ink)}
.steps .what label{font-weight:600}
.steps .what label::before{content:counter(step) " "}
.prevents{color:var(--muted);font-size:.9rem}
.numbers{display:flex;flex-direction:column;gap:.2rem;font-size:.95rem}
.aim{font-weight:600}
.write-in{display:flex;align-items:baseline;gap:.35rem}
.write-in input{flex:1;width:0;min-width:3rem;font:inherit;color:inherit;background:none;border:0;border-bottom:1px solid var(--rule);border-radius:0;padding:0}
.write-in input:focus-visible,.steps input:focus-visible{outline:2px solid var(--ink);outline-offset:2px}
@media screen and (max-width:560px){
.steps li{grid-template-columns:1.5rem minmax(0,1fr)}
.numbers{grid-column:2;margin-top:.3rem}
}
@page sheet{margin:11mm 13mm}
@media print{
.sheet{page:sheet;break-before:page;break-after:page;margin:0;font-size:8.6pt;line-height:1.3}
.sheet h2{font-size:13pt;margin:0}
.steps{margin:.3rem 0}
.steps li{break-inside:avoid;grid-template-columns:12pt minmax(0,1fr) 168pt;padding:2.4pt 0}
.steps li>input{width:9pt;height:9pt;margin-top:1.5pt;appearance:none;border:1px solid var(--ink)}
.prevents,.numbers{font-size:8.2pt}
.numbers{gap:0}
.write-in input{height:11.5pt}
}
`;
