/** Style of a shock at work: the player where scripts run, the stills on paper and elsewhere. */
export const motionStyle = `
.motion-title{margin:0 0 .4rem;font-size:.95rem}
.motion svg{max-width:680px}
.stills{list-style:none;margin:0;padding:0}
.stills p{margin:.6rem 0 .1rem;font-size:.9rem}
.player .row{display:flex;flex-wrap:wrap;gap:.6rem;align-items:center}
.player input{flex:1 1 12rem;min-width:8rem;height:1.75rem;accent-color:var(--ink);touch-action:pan-y}
.player input:focus-visible{outline:3px solid var(--ink);outline-offset:2px}
.player output{font-size:.9rem;font-variant-numeric:tabular-nums;min-width:5.5rem}
@media screen{.live .motion .stills{display:none}}
@media print{.player{display:none}.stills li{break-inside:avoid}}
@media (prefers-reduced-motion:reduce){.player .play{display:none}}
`;
