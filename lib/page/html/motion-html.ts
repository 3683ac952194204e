import type { MotionBlock } from '../blocks/motion.js';
import { type Html, html, trusted } from './html.js';
import { prose } from './prose.js';
import { shockDrawing } from './shock-drawing.js';

/** A shock at work: a place for the player, and stills for paper and for pages without scripts. */
export function motionHtml({ id, title, alt, shock, stills }: MotionBlock): Html {
  return html`<figure class="motion" id="${id}">
<p class="motion-title"><strong>${title}</strong></p>
<div class="player">${trusted('')}</div>
<ol class="stills">${stills.map(({ frame, label }) => {
    const drawn = (layout: 'wide' | 'narrow') => ({ nodes: [shockDrawing(shock, frame, layout)] });
    return html`<li><p>${prose(label)}</p><div class="wide">${drawn('wide')}</div><div class="narrow">${drawn('narrow')}</div></li>`;
  })}</ol>
<figcaption>${prose(alt)}</figcaption>
</figure>`;
}
