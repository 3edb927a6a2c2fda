import { DefaultLinker, type LinkingError, type ReferenceInfo } from 'langium';
import { nameKindOf } from './kinds.ts';

/** Langium's linker, with errors in the language's own words; near names are told by `text-findings.ts`. */
export class SlatLinker extends DefaultLinker {
  protected override createLinkingError(info: ReferenceInfo): LinkingError {
    const kind = nameKindOf(this.reflection.getReferenceType(info)) ?? 'element';
    return { info, message: `no ${kind} named "${info.reference.$refText}" here` };
  }
}
