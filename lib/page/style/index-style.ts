/** Style of the index and of the way from page to page in one file. */
export const indexStyle = `
.index{list-style:none;padding:0;margin:1rem 0}
.index li{padding:1.25rem 0;border-top:1px solid var(--grid)}
.index li.pictured{display:grid;grid-template-columns:1fr 13rem;gap:0 1.5rem}
.index h2{margin:0 0 .25rem}
.index .question{font-size:1rem}
.index .thumbnail{grid-column:2;grid-row:1}
.index svg{display:block;width:100%;height:auto}
.index .found{margin:.75rem 0 0;padding-left:.9rem;border-left:3px solid var(--rule);color:var(--muted);font-size:.95rem}
.way{display:flex;flex-wrap:wrap;justify-content:space-between;gap:.25rem 1.5rem;margin:0 0 1.25rem;font-size:.95rem}
.way a,.begin a,.index h2 a{display:inline-block;padding:.3rem 0}
.way.end{max-width:46rem;margin:3rem auto 0;padding:0 1.25rem}
.way.end:empty{display:none}
.find{margin:1.25rem 0}
.find:empty,.count:empty{display:none}
.find label{display:block;font-size:.9rem;font-weight:600;margin-bottom:.3rem}
.find input{width:100%;font:inherit;color:var(--ink);background:var(--paper);border:1px solid var(--rule);border-radius:3px;padding:.4rem .6rem}
.find input:focus-visible{outline:3px solid var(--ink);outline-offset:2px}
.count{color:var(--muted);font-size:.9rem;margin:.4rem 0 0}
h1:focus,.first h2:focus{outline:none}
.live main.first{display:block;max-width:46rem}
.first label,.first legend{display:block;font-weight:600;padding:.4rem 0}
.first input[type=text]{width:100%;max-width:20rem;font:inherit;color:var(--ink);background:var(--paper);border:1px solid var(--rule);border-radius:3px;padding:.5rem .6rem}
.first input[type=radio]{width:1.2rem;height:1.2rem;margin:0 .5rem 0 0;vertical-align:-.2rem}
.first :focus-visible{outline:3px solid var(--ink);outline-offset:2px}
.first fieldset{border:0;margin:0;padding:0}
.first fieldset label{font-weight:400}
.first .row{display:flex;flex-wrap:wrap;align-items:center;gap:.75rem}
.first button{min-height:2.75rem;padding:.2rem 1.2rem}
.step{color:var(--muted);margin:0}
@media screen and (min-width:62rem){.live .way.end{max-width:64rem}}
@media screen and (max-width:61.99rem){.live header{padding-bottom:.75rem}}
@media screen and (max-width:560px){
.index li.pictured{grid-template-columns:1fr}
.index .thumbnail{grid-column:1;grid-row:2;max-width:15rem}
.way.end{padding:0 1rem}
}
@media print{
.way,.find{display:none}
.index li{break-inside:avoid}
}
`;
