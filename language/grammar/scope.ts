import {
  type AstNode,
  AstUtils,
  DefaultScopeProvider,
  type LangiumCoreServices,
  MapScope,
  type ReferenceInfo,
  type Scope,
  WorkspaceCache,
} from 'langium';
import {
  isAllElse,
  isArgument,
  isFillStatement,
  isLinesStatement,
  isMeasured,
  isOptionPattern,
  isParameter,
  isPattern,
  isPropertyStatement,
  type Parameter,
} from './generated/ast.ts';
import type { SlatSharedServices } from './services.ts';
import type { UseGraph } from './use-graph.ts';

/**
 * What a name can refer to: stock, materials, patterns and runs of the file and of everything it sees
 * through `use`; parameters inside their pattern, where they come before stock of the same name; and
 * the parameters of the pattern that a `fill` names. `measured`, `lines as` and `all else as` see runs of their own file. Of two elements with one name the first counts,
 * the file's own before those it uses.
 */
export class SlatScopeProvider extends DefaultScopeProvider {
  private readonly graph: UseGraph;
  private readonly global: WorkspaceCache<string, Scope>;

  constructor(services: LangiumCoreServices) {
    super(services);
    const shared = services.shared as SlatSharedServices;
    this.graph = shared.workspace.UseGraph;
    this.global = new WorkspaceCache(shared);
  }

  override getScope(context: ReferenceInfo): Scope {
    const type = this.reflection.getReferenceType(context);
    if (type === 'Parameter') return this.scopeOf(parametersFor(context));
    if (type === 'ParameterSource') {
      const parameters = parametersFor(context);
      const stock = this.seen('Stock', context.container);
      return parameters.length > 0 ? this.scopeOf(parameters, stock) : stock;
    }
    // What is measured, or gone on with, is this file's own work.
    if (
      isMeasured(context.container) ||
      isLinesStatement(context.container) ||
      isAllElse(context.container) ||
      isPropertyStatement(context.container)
    )
      return this.own(type, context.container);
    return this.seen(type, context.container);
  }

  private own(type: string, node: AstNode): Scope {
    const uri = AstUtils.getDocument(node).uri.toString();
    return new MapScope(
      this.indexManager
        .allElements(type, new Set([uri]))
        .toArray()
        .reverse(),
    );
  }

  /** Elements of one type in the file of the node and in those it uses. */
  private seen(type: string, node: AstNode): Scope {
    const uri = AstUtils.getDocument(node).uri.toString();
    return this.global.get(`${type} ${uri}`, () => {
      const descriptions = [...this.graph.closure(uri).files].flatMap((file) =>
        this.indexManager.allElements(type, new Set([file])).toArray(),
      );
      return new MapScope(descriptions.reverse());
    });
  }

  private scopeOf(parameters: readonly Parameter[], outer?: Scope): Scope {
    // A name may be missing, or be two quotes with nothing between.
    const named = parameters.filter((parameter) => parameter.name);
    const descriptions = named.map((parameter) =>
      this.descriptions.createDescription(parameter, parameter.name),
    );
    return new MapScope(descriptions.reverse(), outer);
  }
}

/** Parameters visible at a reference, in the order written. */
function parametersFor({ container, property }: ReferenceInfo): readonly Parameter[] {
  if (isArgument(container) && property === 'parameter') {
    return isFillStatement(container.$container) ? (container.$container.pattern?.ref?.parameters ?? []) : [];
  }
  const changed = AstUtils.getContainerOfType(container, isOptionPattern);
  if (changed) return changed.pattern?.ref?.parameters ?? [];
  const pattern = AstUtils.getContainerOfType(container, isPattern);
  if (!pattern) return [];
  // The default of a parameter may name the parameters before it, so that none depends on itself.
  const within = AstUtils.getContainerOfType(container, isParameter);
  return within ? pattern.parameters.slice(0, within.$containerIndex) : pattern.parameters;
}
