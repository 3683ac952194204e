import { transforms } from 'vega-dataflow';
import { axisticks, datajoin, encode, scale } from 'vega-encode';
import { collect, proxy, sieve } from 'vega-transforms';
import { bound, mark, render, viewlayout } from 'vega-view-transforms';

const used = { axisticks, bound, collect, datajoin, encode, mark, proxy, render, scale, sieve, viewlayout };

/** Gives Vega the transforms that the charts use, and no others: a page carries what is named here. */
export function registerTransforms(): void {
  Object.assign(transforms, used);
}

/** Names of the transforms that a page has. */
export const registeredTransforms: readonly string[] = Object.keys(used);
