import {
  type DeepPartial,
  DocumentState,
  inject,
  type LangiumCoreServices,
  type Module,
  type PartialLangiumCoreServices,
} from 'langium';
import {
  createDefaultModule,
  createDefaultSharedModule,
  type DefaultSharedModuleContext,
  type LangiumServices,
  type LangiumSharedServices,
  type PartialLangiumServices,
  type ServiceRequirements,
} from 'langium/lsp';
import {
  SlatGeneratedModule,
  SlatGeneratedSharedModule,
  SlatModule,
  type SlatSharedAddedServices,
  SlatSharedModule,
} from '../language/grammar/index.ts';
import {
  SlatCodeActions,
  SlatCodeLens,
  SlatCompletion,
  SlatDefinition,
  SlatFolding,
  SlatFormatter,
  SlatHover,
  SlatNodeKinds,
  SlatRename,
} from './features/index.ts';
import { SlatValidator } from './findings/index.ts';
import { type Reckoner, SlicedReckoner, TotalsKeeper } from './reckoning/index.ts';
import { WorkKeeper } from './work/index.ts';
import { GradualWorkspaceManager, OpenFileUpdates, PatientDocumentBuilder } from './workspace/index.ts';

/** What the server adds to the shared services. */
export interface SlatServerAddedServices {
  readonly workspace: {
    readonly WorkspaceManager: GradualWorkspaceManager;
  };
  readonly work: {
    readonly Keeper: WorkKeeper;
    readonly Reckoner: Reckoner;
    readonly Totals: TotalsKeeper;
  };
}

export type SlatServerSharedServices = LangiumSharedServices &
  SlatSharedAddedServices &
  SlatServerAddedServices;
export type SlatServices = LangiumServices & { readonly shared: SlatServerSharedServices };

/** Requests that need names to be linked in one document do not wait for the findings of all. */
export const REQUIREMENTS: Partial<ServiceRequirements> = {
  CodeLensProvider: DocumentState.Parsed,
  CompletionProvider: DocumentState.Linked,
  HoverProvider: DocumentState.Linked,
  DefinitionProvider: DocumentState.Linked,
  DocumentSymbolProvider: DocumentState.Parsed,
  FoldingRangeProvider: DocumentState.Parsed,
  Formatter: DocumentState.Parsed,
};

const sharedServerModule: Module<
  SlatServerSharedServices,
  DeepPartial<LangiumSharedServices> & SlatServerAddedServices
> = {
  lsp: {
    DocumentUpdateHandler: (shared) => new OpenFileUpdates(shared),
    NodeKindProvider: () => new SlatNodeKinds(),
  },
  workspace: {
    DocumentBuilder: (shared) => new PatientDocumentBuilder(shared),
    WorkspaceManager: (shared) => new GradualWorkspaceManager(shared),
  },
  work: {
    Keeper: (shared) => new WorkKeeper(shared),
    // A host with threads brings one that works in them.
    Reckoner: (shared) => new SlicedReckoner(shared),
    Totals: (shared) => new TotalsKeeper(shared),
  },
};

const serverModule: Module<SlatServices, PartialLangiumServices> = {
  lsp: {
    CodeActionProvider: (services) => new SlatCodeActions(services),
    CodeLensProvider: (services) => new SlatCodeLens(services),
    CompletionProvider: (services) => new SlatCompletion(services),
    DefinitionProvider: (services) => new SlatDefinition(services),
    FoldingRangeProvider: (services) => new SlatFolding(services),
    Formatter: (services) => new SlatFormatter(services),
    HoverProvider: (services) => new SlatHover(services),
    RenameProvider: (services) => new SlatRename(services),
  },
  validation: {
    DocumentValidator: (services) => new SlatValidator(services),
  },
};

/**
 * The language with its language server.
 *
 * @param context where files are read from and, with a server, the connection
 * @param host replaces shared services that depend on the host, such as what `use` may reach
 * @param extra replaces single services, for tests
 */
export function createSlatServices(
  context: DefaultSharedModuleContext,
  host: Module<SlatServerSharedServices, DeepPartial<SlatServerSharedServices>> = {},
  extra: Module<LangiumCoreServices, PartialLangiumCoreServices> = {},
): { shared: SlatServerSharedServices; slat: SlatServices } {
  const shared: SlatServerSharedServices = inject(
    createDefaultSharedModule(context),
    SlatGeneratedSharedModule,
    SlatSharedModule,
    sharedServerModule,
    host,
  );
  const slat: SlatServices = inject(
    createDefaultModule({ shared }),
    SlatGeneratedModule,
    SlatModule,
    serverModule,
    extra,
  ) as SlatServices;
  shared.ServiceRegistry.register(slat);
  // They listen to the builder, so they must be there before the first document is.
  void shared.work.Keeper;
  void shared.work.Totals;
  return { shared, slat };
}
