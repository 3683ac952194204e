import { bruteLanding } from './test/notebooks/brute-landing.js';
import { files } from './test/notebooks/answers.js';
import { landed } from './notebooks/base/landed.js';
import { cornerOf, movingBuild } from './notebooks/base/moving-build.js';
import { moveCorner } from './lib/motion/corner/move-corner.js';
import { referenceShock } from './test/notebooks/reference-shock.js';
import { readParts } from './lib/parts/index.js';
const b0 = files.twoCars.builds[0]!;
for (const c of [{sprungMass:.45,motionRatio:.7},{sprungMass:.25,motionRatio:.8},{sprungMass:.9,motionRatio:.6},{sprungMass:.25,motionRatio:.6},{sprungMass:.9,motionRatio:.8}]) {
  let l; try { l = landed({...b0, corner:c}, 292.15, .1).outcome.fastestCompression.value } catch(e) { l=String(e).slice(0,150) }
  console.log(c, l, bruteLanding(b0, 292.15,.1,{mass:c.sprungMass,ratio:c.motionRatio}));
}
const b = files.demo.builds[0]!;
for (const b of files.demo.builds) {
const m = movingBuild(b, 293.15), c = cornerOf(b).corner;
const o = moveCorner(m.shock, c, {kind:'bump',height:.015,length:.15,speed:6},{duration:.2,parts:400});
console.log(b.name, o.fastestCompression, o.fastestRebound, o.cavities, o.liftOffs, o.touchDowns);
const i = Math.round(o.fastestRebound.time/.2*400); const t=o.trace;
for (let k=i-6;k<i+7;k+=1) console.log(t.times[k], t.travels[k], t.speeds[k], 'cav', t.cavities[k], 'pb', t.blindPressures[k], 'ps', t.shaftPressures[k], 'F', t.shockForces[k]);
break;
}
const r = {...readParts(referenceShock).builds[0]!, spring:{name:'s',rate:600,freeLength:.042}, corner:{sprungMass:.34,motionRatio:.72}};
const o = landed(r,293.15,.15).outcome; console.log('ref', o.largestTravel, o.largestShockForce, bruteLanding(r,293.15,.15,{mass:.34,ratio:.72}));
