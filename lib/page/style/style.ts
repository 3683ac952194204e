import { inkColours } from '../../plot/chart/palette.js';
import { checklistStyle } from './checklist-style.js';
import { controlStyle } from './control-style.js';
import { indexStyle } from './index-style.js';
import { motionStyle } from './motion-style.js';

type ColourName = keyof typeof inkColours | 'panel' | 'passed' | 'failed' | 'caution';

/** Colours of the page on a light ground; the ink of the figures is the ink of the text. */
const light: Readonly<Record<ColourName, string>> = {
  paper: inkColours.paper,
  ink: inkColours.ink,
  muted: inkColours.muted,
  rule: inkColours.rule,
  grid: inkColours.grid,
  panel: '#f4f6f8',
  passed: '#0b6b4b',
  failed: '#a3260c',
  caution: '#7a4d00',
};

const dark: typeof light = {
  paper: '#14181c',
  ink: '#e8ebee',
  muted: '#a9b2bb',
  rule: '#7f8a95',
  grid: '#333a41',
  panel: '#1e242a',
  passed: '#63cfa2',
  failed: '#ff9a80',
  caution: '#f0bb5c',
};

function variables(colours: typeof light): string {
  return Object.entries(colours)
    .map(([name, value]) => `--${name}:${value}`)
    .join(';');
}

/** The figures carry light colours; on a dark ground their inks, and a black series, change with the page. */
function darkFigures(): string {
  const inks = Object.entries(inkColours).map(([name, value]) => [value, `var(--${name})`] as const);
  return [...inks, ['#000000', '#ffffff'] as const]
    .map(([from, to]) => `svg [fill="${from}"]{fill:${to}}svg [stroke="${from}"]{stroke:${to}}`)
    .join('');
}

const layout = `
*{box-sizing:border-box}
html{color-scheme:light dark;-webkit-text-size-adjust:100%}
body{margin:0;background:var(--paper);color:var(--ink);font:1rem/1.55 Inter,Helvetica,Arial,sans-serif}
header,main,footer{max-width:46rem;margin:0 auto;padding:0 1.25rem;overflow-wrap:break-word}
header{padding-top:2rem}
h1{font-size:1.75rem;line-height:1.2;margin:0 0 .25rem;font-weight:600}
h2{font-size:1.2rem;line-height:1.3;margin:2.25rem 0 .5rem;font-weight:600}
p,ul{margin:.75rem 0}
ul{padding-left:1.25rem}
strong{font-weight:600}
.question{color:var(--muted);font-size:1.1rem;margin:0}
.answer{font-size:1.2rem;line-height:1.45;margin:1.25rem 0;padding:.9rem 1.1rem;background:var(--panel);border-left:4px solid var(--ink)}
.settings{display:grid;grid-template-columns:fit-content(45%) 1fr;gap:.15rem 1.25rem;margin:1rem 0;font-size:.95rem}
.settings dt{color:var(--muted)}
.settings dd{margin:0}
figure{margin:2rem 0}
figure svg{display:block;width:100%;height:auto}
figcaption{margin-top:.5rem;font-size:.95rem}
.narrow{display:none}
a{color:inherit}
a:focus-visible{outline:3px solid var(--ink);outline-offset:2px}
details{margin-top:.5rem;font-size:.95rem}
summary{cursor:pointer;color:var(--muted)}
summary:focus-visible,.table:focus-visible{outline:3px solid var(--ink);outline-offset:2px}
.table{overflow-x:auto;margin:1rem 0}
table{border-collapse:collapse;font-variant-numeric:tabular-nums;font-size:.9rem;line-height:1.4;min-width:50%}
caption{text-align:left;font-weight:600;padding:0 0 .4rem}
th,td{padding:.3rem 1rem .3rem 0;text-align:left;vertical-align:top;border-bottom:1px solid var(--grid);font-weight:400}
thead th{border-bottom:1px solid var(--rule);color:var(--muted);vertical-align:bottom}
.unit{white-space:nowrap}
tbody th{min-width:6.5rem;position:sticky;left:0;background:var(--paper)}
td{text-align:right;white-space:nowrap}
td.words{text-align:left;white-space:normal}
table:has(thead th:nth-child(9)) :is(th,td){padding-right:.6rem}
.note,.file{color:var(--muted);font-size:.9rem}
.check,.caution{padding:.6rem .9rem;border:1px solid;border-left-width:4px}
.check .detail{color:var(--muted)}
.passed{border-color:var(--passed)}
.passed strong{color:var(--passed)}
.failed{border-color:var(--failed)}
.failed strong{color:var(--failed)}
.caution{border-color:var(--caution)}
.caution strong{color:var(--caution)}
.reveal{margin:1.5rem 0;padding:.9rem 1.1rem;border:1px solid var(--rule)}
.reveal>:first-child{margin-top:0}
.choices{list-style:upper-alpha;margin:.5rem 0;padding-left:1.6rem}
.reveal>details>summary{font-weight:600;color:var(--ink)}
pre.lines{white-space:pre-wrap;overflow-wrap:anywhere;padding:.7rem .9rem;border:1px solid var(--rule);font-size:.85rem;user-select:all}
footer{margin-top:3rem;padding-bottom:3rem;font-size:.9rem;color:var(--muted)}
footer>:first-child{border-top:1px solid var(--rule);padding-top:1rem}
footer pre{white-space:pre-wrap;font:inherit;font-size:.8rem}
`;

/** Tables of five and of eight columns or more. */
const many = 'table:has(thead th:nth-child(5))';
const most = 'table:has(thead th:nth-child(8))';

/** Under 560 px the narrow pictures are shown, and the headings of wide tables stand upright, so that no column is out of sight. */
const phone = `
@media screen and (max-width:560px){
header,main,footer{padding-left:1rem;padding-right:1rem}
.wide{display:none}
.narrow{display:block}
th,td{padding-right:.6rem}
${many}{font-size:.75rem}
${many} :is(th,td){padding-right:.4rem}
${many} tbody th{min-width:0}
${many} thead th+th{writing-mode:vertical-rl;transform:rotate(180deg);padding:.2rem 0 .3rem .4rem}
${most}{font-size:.64rem}
${most} :is(th,td){padding-right:.2rem}
}
`;

const print = `
@page{size:A4;margin:16mm 18mm}
@media print{
body{font-size:10.5pt}
header,main,footer{max-width:none;padding:0}
figure,.check,.caution,.answer,tr{break-inside:avoid}
h2,caption{break-after:avoid}
.table{overflow:visible}
details:not([open]),footer details,.file{display:none}
}
`;

/** The style sheet of a page; light, dark, phone and paper. Nothing moves unless a reader plays it. */
export const styleSheet = `:root{${variables(light)}}
${layout}${phone}@media screen and (prefers-color-scheme:dark){:root{${variables(dark)}}${darkFigures()}}
${print}${checklistStyle}${controlStyle}${indexStyle}${motionStyle}`;
