import { type Document, isAlias, isMap, isScalar, isSeq, type YAMLMap } from 'yaml';
import type { FieldPath, Finding } from './finding.js';
import { shown } from './shown.js';

/** The most entries a list, or keys a group, may have. */
export const mostEntries = 1000;

/** What YAML allows and a parts file does not: aliases, tags, repeated keys, endless numbers, endless lists. */
export function sourceFaults(document: Document.Parsed): readonly Finding[] {
  const findings: Finding[] = [];
  if (document.directives.yaml.explicit === true && document.directives.yaml.version !== '1.2')
    findings.push({ path: [], message: 'must be YAML 1.2; leave the %YAML line out' });
  visit(document.contents, [], findings);
  return findings;
}

function visit(node: unknown, path: FieldPath, findings: Finding[]): void {
  if (isAlias(node)) {
    findings.push({ path, message: 'must be written out: aliases (*) are not accepted' });
    return;
  }
  if (isScalar(node) || isMap(node) || isSeq(node)) {
    if (node.tag !== undefined)
      findings.push({ path, message: `must be plain: tags such as ${shown(node.tag)} are not accepted` });
  }
  if (isScalar(node)) {
    if (typeof node.value === 'number' && !Number.isFinite(node.value))
      findings.push({ path, message: `must be a number of ordinary size, got ${node.source ?? node.value}` });
  } else if (isSeq(node)) {
    if (node.items.length > mostEntries)
      findings.push({ path, message: tooMany('entries', node.items.length) });
    else for (const [index, item] of node.items.entries()) visit(item, [...path, index], findings);
  } else if (isMap(node)) {
    if (node.items.length > mostEntries) findings.push({ path, message: tooMany('keys', node.items.length) });
    else visitMap(node, path, findings);
  }
}

function tooMany(what: string, count: number): string {
  return `must have at most ${mostEntries} ${what}, got ${count}`;
}

function visitMap(map: YAMLMap, path: FieldPath, findings: Finding[]): void {
  const seen = new Set<string>();
  for (const { key, value } of map.items) {
    if (!isScalar(key) || typeof key.value !== 'string' || key.tag !== undefined) {
      const got = isScalar(key) ? shown(key.value) : 'something else';
      findings.push({ path, message: `every key must be plain text, got ${got}` });
      continue;
    }
    const name = key.value;
    // JavaScript gives this one key a meaning of its own.
    if (name === '__proto__') findings.push({ path: [...path, name], message: 'unknown key', atKey: true });
    if (seen.has(name)) findings.push({ path: [...path, name], message: 'is given twice', atKey: true });
    seen.add(name);
    visit(value, [...path, name], findings);
  }
}
