import {
  Cancellation,
  type DocumentValidator,
  interruptAndCheck,
  type LangiumDocument,
  type ValidationOptions,
} from 'langium';
import type { Diagnostic } from 'vscode-languageserver-types';
import type { SlatCoreServices } from '../../language/grammar/index.ts';
import type { SlatServices } from '../services.ts';
import { placeFindings } from '../work/index.ts';
import { toDiagnostic } from './diagnostics.ts';

/**
 * Turns the findings on an open document into diagnostics. A document that is not open is not checked:
 * its findings would be shown to no one, and it must not slow those that are.
 */
export class SlatValidator implements DocumentValidator {
  /** How often each document was checked, for tests and measurements. */
  readonly counts = new Map<string, number>();
  private readonly services: SlatServices;

  constructor(services: SlatServices) {
    this.services = services;
  }

  async validateDocument(
    document: LangiumDocument,
    _options?: ValidationOptions,
    cancelToken = Cancellation.CancellationToken.None,
  ): Promise<Diagnostic[]> {
    const uri = document.uri.toString();
    const { workspace, work } = this.services.shared;
    if (!workspace.TextDocuments.get(document.uri)) return [];
    await interruptAndCheck(cancelToken);
    const kept = work.Keeper.of(uri);
    if (!kept) return [];
    this.counts.set(uri, (this.counts.get(uri) ?? 0) + 1);
    try {
      return placeFindings(this.services as unknown as SlatCoreServices, document, kept.work).map(
        toDiagnostic,
      );
    } catch (error) {
      // A check that fails must not hold up the build of everything else.
      console.error(`${uri} cannot be checked:`, error);
      return [];
    }
  }
}
