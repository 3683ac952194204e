/**
 * Style of the controls of a live page: beside the figures where there is room, above them and within reach where there is not.
 * On paper the settings stand as words.
 */
export const controlStyle = `
.controls:empty,.tools:empty,.fault:empty,.not-yet{display:none}
@media screen{.live .settings{display:none}
.starting:not(.live) .not-yet{display:block;position:fixed;inset:auto 0 0;margin:0;padding:.5rem 1.25rem;background:var(--panel);border-top:1px solid var(--rule);font-size:.9rem;text-align:center}}
.panel{margin:1rem 0;padding:.6rem .9rem;background:var(--panel);border:1px solid var(--grid)}
.panel>summary{font-weight:600;color:var(--ink)}
.control{margin:.7rem 0}
.control label,.control legend{font-size:.9rem;font-weight:600}
.control .help{margin:.15rem 0 0;color:var(--muted);font-size:.8rem;line-height:1.35}
.control.number{display:grid;grid-template-columns:1fr auto;gap:0 .5rem;align-items:baseline}
.control.number .value{white-space:nowrap;font-size:.9rem}
.control.number input[type=number]{width:4.6rem;text-align:right}
.control.number input[type=range],.control.number .help{grid-column:1/-1}
.control input[type=range]{width:100%;height:1.75rem;margin:0;accent-color:var(--ink);touch-action:pan-y}
.control select,.control.copy input{width:100%}
.copy label{display:block;margin-bottom:.3rem}
.control.text{display:grid;grid-template-columns:1fr 8.5rem;gap:0 .5rem;align-items:baseline;margin:.3rem 0}
.control.text label{font-weight:400}
.control.text input{width:100%}
.control input[type=file]{width:100%;font:inherit;font-size:.85rem}
.parts p{font-size:.85rem;margin:.5rem 0}
.parts .row{display:flex;flex-wrap:wrap;gap:.4rem}
.told:empty{display:none}
.control fieldset{margin:0;padding:0;border:0}
.boxes{max-height:11rem;overflow:auto;display:flex;flex-direction:column}
.boxes label{font-weight:400;padding:.1rem 0}
.boxes input{accent-color:var(--ink);width:1.05rem;height:1.05rem;margin:0 .3rem 0 0;vertical-align:-.15rem}
.control input[type=number],.control input[type=text],.control select,button{font:inherit;font-size:.9rem;color:var(--ink);background:var(--paper);border:1px solid var(--rule);border-radius:3px;padding:.2rem .4rem;min-height:1.9rem}
button{padding:.2rem .7rem;cursor:pointer}
.controls :focus-visible,button:focus-visible{outline:3px solid var(--ink);outline-offset:2px}
.tools{display:flex;flex-wrap:wrap;gap:.5rem;margin:.5rem 0}
.fault{white-space:pre-wrap;overflow-wrap:anywhere;font:inherit;font-weight:600;color:var(--failed);border:1px solid;border-left-width:4px;padding:.6rem .9rem;margin:1rem 0;background:var(--paper)}
.controls .fault{position:sticky;bottom:0;max-height:23vh;margin-bottom:0;overflow:auto}
.status{position:absolute;width:1px;height:1px;margin:0;overflow:hidden;clip-path:inset(50%);white-space:nowrap}
@media screen and (min-width:62rem){
.live header,.live main,.live footer{max-width:64rem}
.live main{display:grid;grid-template-columns:15.5rem minmax(0,46rem);gap:0 2rem}
.live main>*{grid-column:2;margin-top:.75rem;margin-bottom:.75rem}
.live main>h2,.live main>section>h2{margin-top:1.25rem}
.live main>.controls{grid-column:1;grid-row:1/span 400;position:sticky;top:0;align-self:start;max-height:100vh;overflow:auto}
}
@media screen and (max-width:61.99rem){
.live .controls{position:sticky;top:0;z-index:1;background:var(--paper);max-height:46vh;overflow:auto;border-bottom:1px solid var(--rule)}
.panel{margin:0}
.fields{display:grid;grid-template-columns:repeat(auto-fill,minmax(15rem,1fr));gap:0 1.5rem}
}
@media print{.controls,.tools{display:none}}
`;
