import { parentPort } from 'node:worker_threads';
import { WorkerDesk } from './worker-desk.ts';
import type { ToWorker } from './worker-messages.ts';

// The worker's entry in Node: a desk at a port.
const desk = new WorkerDesk((message) => parentPort?.postMessage(message));
parentPort?.on('message', (message: ToWorker) => desk.take(message));
