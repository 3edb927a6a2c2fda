/**
 * The language server over a real connection: the bytes of the protocol go through streams, as
 * between an editor and a server process.
 *
 * Lives here: what holds between client and server. Does not live here: single features, which are
 * tested beside their files.
 */
export { type Client, connect } from './client.ts';
