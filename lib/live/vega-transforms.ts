import { transforms } from 'vega-dataflow';
import { axisticks, datajoin, encode, scale, sortitems } from 'vega-encode';
import { aggregate, collect, facet, filter, formula, proxy, relay, sieve } from 'vega-transforms';
import { bound, mark, render, viewlayout } from 'vega-view-transforms';

const used = {
  aggregate,
  axisticks,
  bound,
  collect,
  datajoin,
  encode,
  facet,
  filter,
  formula,
  mark,
  proxy,
  relay,
  render,
  scale,
  sieve,
  sortitems,
  viewlayout,
};

/** Gives Vega the transforms that the charts use, and no others: a page carries what is named here. */
export function registerTransforms(): void {
  Object.assign(transforms, used);
}

/** Names of the transforms that a page has. */
export const registeredTransforms: readonly string[] = Object.keys(used);
