/**
 * The edge: Langium's language server with this language's features, the command line, and the
 * protocol to the client.
 *
 * Lives here: LSP features (one file each), the working state of open documents, entries for Node and
 * workers, `slatwright` on the command line. Does not live here: calculation of any kind (language/).
 */
export * from './protocol.ts';
