import type { MotionBlock, MotionFrame } from '../../page/blocks/motion.js';
import { blocksOf, type Page } from '../../page/blocks/page.js';
import { direction, force, shockDrawing } from '../../page/html/shock-drawing.js';
import { patchChildren } from '../document/patch.js';
import { layoutShown } from './picture.js';

/** How long the whole motion is played [s]. */
const playedIn = 8;

/** One player in its place. */
interface Player {
  show(block: MotionBlock): void;
}

/** Players of the shocks at work on a page, each made when its place is first seen. */
export function motionPlayers(main: Element): (page: Page) => void {
  const made = new WeakMap<Element, Player>();
  return (page) => {
    for (const block of blocksOf(page)) {
      if (block.kind !== 'motion') continue;
      const place = main.querySelector(`#${block.id}>.player`);
      if (place === null) continue;
      const player = made.get(place) ?? playerIn(place);
      made.set(place, player);
      player.show(block);
    }
  };
}

function playerIn(place: Element): Player {
  const stage = document.createElement('div');
  const row = document.createElement('div');
  row.className = 'row';
  const button = document.createElement('button');
  button.type = 'button';
  button.className = 'play';
  const slider = document.createElement('input');
  slider.type = 'range';
  slider.min = '0';
  slider.step = '1';
  slider.value = '0';
  const time = document.createElement('output');
  row.append(button, slider, time);
  place.replaceChildren(stage, row);
  let shown: MotionBlock | undefined;
  let playing = false;
  const draw = (): void => {
    const frame = shown?.frames[Number(slider.value)];
    if (shown === undefined || frame === undefined) return;
    patchChildren(stage, [shockDrawing(shown.shock, frame, layoutShown())]);
    const since = frame.time - (shown.frames[0]?.time ?? 0);
    time.value = `${(1000 * since).toFixed(0)} ms`;
    slider.setAttribute('aria-valuetext', frameText(since, frame));
  };
  const set = (now: boolean): void => {
    playing = now;
    button.textContent = now ? 'Pause' : 'Play slowly';
  };
  const play = (): void => {
    const last = Number(slider.max);
    const first = Number(slider.value) >= last ? 0 : Number(slider.value);
    let start: number | undefined;
    const step = (now: number): void => {
      if (!place.isConnected) set(false);
      if (!playing) return;
      start ??= now;
      const at = first + Math.floor(((now - start) / 1000 / playedIn) * last);
      slider.value = String(Math.min(at, last));
      draw();
      if (at >= last) set(false);
      else requestAnimationFrame(step);
    };
    set(true);
    requestAnimationFrame(step);
  };
  set(false);
  button.addEventListener('click', () => {
    if (playing) set(false);
    else play();
  });
  slider.addEventListener('input', () => {
    set(false);
    draw();
  });
  return {
    show(block) {
      if (block === shown) return;
      shown = block;
      slider.max = String(block.frames.length - 1);
      slider.setAttribute('aria-label', `${block.title}: time`);
      draw();
    },
  };
}

function frameText(since: number, { travel, speed, force: newtons, cavity }: MotionFrame): string {
  const torn = cavity > 0 ? `, a cavity of ${(1e6 * cavity).toFixed(2)} ml` : '';
  return `${(1000 * since).toFixed(0)} ms: ${(1000 * travel).toFixed(1)} mm in, ${direction(speed)}, ${force(newtons)}${torn}`;
}
