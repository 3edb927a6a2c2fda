import type * as ast from '../grammar/index.ts';
import { type NameKind, nameKindOf } from '../grammar/index.ts';
import { tellMissing } from './pick-statements.ts';
import { originOf, type Reader, tell } from './reader.ts';

/** Kinds that a file can refer to in the files it uses, so that one name must not mean two things. */
const SHARED_KINDS: ReadonlySet<NameKind> = new Set(['stock', 'material', 'pattern']);

/**
 * Tells names given twice to one kind of thing, in the file or here and in a file it uses.
 *
 * @returns elements that have the name of an earlier one: the earlier one counts
 */
export function readNames(reader: Reader): ReadonlySet<ast.Element> {
  const elsewhere = namesUsed(reader);
  const first = new Map<string, ast.Element>();
  const later = new Set<ast.Element>();
  let job: ast.Job | undefined;
  for (const element of reader.root.elements ?? []) {
    if (element.$type === 'Job') {
      if (job) tellSecondJob(reader, element, job);
      job ??= element;
      continue;
    }
    const kind = nameKindOf(element.$type);
    if (
      element.$type === 'Use' ||
      element.$type === 'Measured' ||
      element.$type === 'MeasuredBoard' ||
      !kind ||
      !('name' in element)
    )
      continue;
    const { name } = element;
    // Without a name at all the text broke off; parsing tells of it.
    if (name === undefined) continue;
    if (name.trim() === '') {
      tellMissing(reader, element, 'name');
      continue;
    }
    const key = `${kind} ${name}`;
    const earlier = first.get(key);
    if (earlier) later.add(element);
    else first.set(key, element);
    tellDuplicate(reader, element, name, kind, earlier ?? elsewhere.get(key), earlier ? 0 : 1);
    if (element.$type === 'Pattern') readParameterNames(reader, element);
  }
  return later;
}

function namesUsed(reader: Reader): ReadonlyMap<string, ast.Element> {
  const names = new Map<string, ast.Element>();
  for (const file of reader.used) {
    for (const element of file.elements ?? []) {
      const kind = nameKindOf(element.$type);
      if (!kind || !SHARED_KINDS.has(kind) || !('name' in element) || !element.name) continue;
      const key = `${kind} ${element.name}`;
      if (!names.has(key)) names.set(key, element);
    }
  }
  return names;
}

function readParameterNames(reader: Reader, { parameters }: ast.Pattern): void {
  const first = new Map<string, ast.Parameter>();
  for (const parameter of parameters ?? []) {
    if (parameter.name === undefined) continue;
    tellDuplicate(reader, parameter, parameter.name, 'parameter', first.get(parameter.name), 0);
    if (!first.has(parameter.name)) first.set(parameter.name, parameter);
  }
}

function tellDuplicate(
  reader: Reader,
  node: ast.Element | ast.Parameter,
  name: string,
  kind: NameKind,
  other: ast.Element | ast.Parameter | undefined,
  elsewhere: 0 | 1,
): void {
  if (!other) return;
  const related = [{ origin: originOf(reader, other), note: kind }];
  tell(reader, 'duplicate-name', originOf(reader, node, 'name'), { name, kind, elsewhere }, related);
}

function tellSecondJob(reader: Reader, second: ast.Job, first: ast.Job): void {
  const related = [{ origin: originOf(reader, first), note: 'job' }];
  tell(reader, 'stated-twice', originOf(reader, second), { what: 'job', block: 'file' }, related);
}
