import { type Browser, chromium } from 'playwright-core';
import { findBrowser } from './browser-binary.ts';

const LAUNCH_MS = 90_000;

/** `--no-sandbox`: the pages shown are our own, on the loopback address, and machines for tests run as root. */
const ARGUMENTS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-dev-shm-usage',
];

/** Starts a headless browser. It ends with `close()`, or with this process. */
export async function launchBrowser(): Promise<Browser> {
  const binary = await findBrowser();
  return chromium.launch({
    executablePath: binary.path,
    args: ARGUMENTS,
    env: { ...definedEnvironment(), ...binary.env },
    headless: true,
    timeout: LAUNCH_MS,
  });
}

function definedEnvironment(): Record<string, string> {
  const env: Record<string, string> = {};
  for (const [name, value] of Object.entries(process.env)) if (value !== undefined) env[name] = value;
  return env;
}
