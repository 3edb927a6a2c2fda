import type { CancellationToken, Disposable } from 'vscode';
import type {
  BetterFound,
  Material,
  Materials,
  PileTold,
  Place,
  RunsAnswer,
  TakeoffFiles,
  Tried,
} from '../../../server/protocol.ts';

/** What the view of materials needs of the language server. */
export interface MaterialsSource {
  /** Begins to follow what is bought for a document; resolves to what is known. */
  followMaterials(uri: string): Promise<Materials>;
  /** It is no longer looked at. */
  leaveMaterials(uri: string): void;
  /** Lines under one that holds pieces. */
  materialPieces(uri: string, id: string): Promise<readonly Material[]>;
  /** Hears of every change of what is followed. */
  onMaterialsChanged(listener: (materials: Materials) => void): Disposable;
  /** Where a piece is written; undefined when nobody knows. */
  locate(uri: string, piece: string): Promise<Place | undefined>;
  /** Hears when a server starts anew: everything followed must be followed again. */
  onRestarted(listener: () => void): Disposable;
}

/** What commands need of the language server that it takes a while to work out; undefined where it cannot. */
export interface ReckoningSource {
  /** Choices for a run that nothing else beats; `told` hears how far the search has come. */
  findBetter(
    uri: string,
    run: string,
    told: (tried: Tried) => void,
    token: CancellationToken,
  ): Promise<BetterFound | undefined>;
  /** What the boards on hand still give. */
  tellPile(uri: string, token: CancellationToken): Promise<PileTold | undefined>;
  /** The sheets of the takeoff. */
  takeoffSheets(uri: string, token: CancellationToken): Promise<TakeoffFiles | undefined>;
  /** The document's runs, and the one at a place. */
  runsAt(uri: string, line: number, character: number): Promise<RunsAnswer>;
}
