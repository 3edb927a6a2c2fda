import type { LangiumCoreServices, LangiumParser, Linker, Module, PartialLangiumCoreServices } from 'langium';
import { createSlatCoreServices } from '../language/grammar/index.ts';

/** Made once for all tests of a file, as an editor makes it once for all documents: it takes a tenth of a second. */
const { parser: lender } = createSlatCoreServices().slat;

/**
 * Lends the same lexer and parsers to every set of services that a test makes. Nothing stays in them from one text
 * to the next but the linker, which belongs to the services: it is put in place for each text.
 */
export const lentParser: Module<LangiumCoreServices, PartialLangiumCoreServices> = {
  parser: {
    Lexer: () => lender.Lexer,
    CompletionParser: () => lender.CompletionParser,
    LangiumParser: ({ references }) => {
      const parse: LangiumParser['parse'] = (text, options) => {
        (lender.LangiumParser as unknown as { linker: Linker }).linker = references.Linker;
        return lender.LangiumParser.parse(text, options);
      };
      return { parse } as LangiumParser;
    },
  },
};
