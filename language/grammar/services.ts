import {
  createDefaultCoreModule,
  createDefaultSharedCoreModule,
  type DeepPartial,
  type DefaultSharedCoreModuleContext,
  EmptyFileSystem,
  inject,
  type LangiumCoreServices,
  type LangiumSharedCoreServices,
  type Module,
  type PartialLangiumCoreServices,
} from 'langium';
import { SlatGeneratedModule, SlatGeneratedSharedModule } from './generated/module.ts';
import { SlatLexer } from './lexer.ts';
import { SlatLexerMessages } from './lexer-messages.ts';
import { SlatLinker } from './linker.ts';
import { createSlatCompletionParser, createSlatParser } from './parser.ts';
import { SlatDocumentBuilder, SlatIndexManager } from './relinking.ts';
import { SlatScopeProvider } from './scope.ts';
import { SlatScopeComputation } from './symbols.ts';
import { UseGraph } from './use-graph.ts';
import { SlatValueConverter } from './value-converter.ts';
import { DefaultWorkspaceBounds, type WorkspaceBounds } from './workspace-bounds.ts';

/** What this language adds to Langium's shared services. */
export interface SlatSharedAddedServices {
  workspace: {
    UseGraph: UseGraph;
    WorkspaceBounds: WorkspaceBounds;
  };
}

export type SlatSharedServices = LangiumSharedCoreServices & SlatSharedAddedServices;
export type SlatCoreServices = LangiumCoreServices & { shared: SlatSharedServices };

/** Shared services of the language, for Langium's core and for its language server alike. */
export const SlatSharedModule: Module<
  SlatSharedServices,
  DeepPartial<LangiumSharedCoreServices> & SlatSharedAddedServices
> = {
  workspace: {
    UseGraph: (shared) => new UseGraph(shared),
    WorkspaceBounds: (shared) => new DefaultWorkspaceBounds(shared),
    IndexManager: (shared) => new SlatIndexManager(shared),
    DocumentBuilder: (shared) => new SlatDocumentBuilder(shared),
  },
};

/** Services of the language, for Langium's core and for its language server alike. */
export const SlatModule: Module<LangiumCoreServices, PartialLangiumCoreServices> = {
  parser: {
    Lexer: (services) => new SlatLexer(services),
    LexerErrorMessageProvider: () => new SlatLexerMessages(),
    LangiumParser: (services) => createSlatParser(services),
    CompletionParser: (services) => createSlatCompletionParser(services),
    ValueConverter: () => new SlatValueConverter(),
  },
  references: {
    Linker: (services) => new SlatLinker(services),
    ScopeComputation: (services) => new SlatScopeComputation(services),
    ScopeProvider: (services) => new SlatScopeProvider(services),
  },
};

/**
 * The language without a language server: for the command line, tests and workers.
 *
 * @param context where files are read from; none by default
 * @param extra replaces single services, for tests
 * @param host replaces shared services that depend on the host, such as what `use` may reach
 */
export function createSlatCoreServices(
  context: DefaultSharedCoreModuleContext = EmptyFileSystem,
  extra: Module<LangiumCoreServices, PartialLangiumCoreServices> = {},
  host: Module<SlatSharedServices, DeepPartial<SlatSharedServices>> = {},
): { shared: SlatSharedServices; slat: SlatCoreServices } {
  const shared: SlatSharedServices = inject(
    createDefaultSharedCoreModule(context),
    SlatGeneratedSharedModule,
    SlatSharedModule,
    host,
  );
  const slat = inject(
    createDefaultCoreModule({ shared }),
    SlatGeneratedModule,
    SlatModule,
    extra,
  ) as SlatCoreServices;
  shared.ServiceRegistry.register(slat);
  return { shared, slat };
}
