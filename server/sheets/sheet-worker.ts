import { parentPort, workerData } from 'node:worker_threads';
import { readSheet } from '../services/read-sheet.ts';
import type { SheetRequest } from './sheet-messages.ts';

/** Reads one file, off the main thread, and ends. */
const { bytes, contentType } = workerData as SheetRequest;

parentPort?.postMessage(await readSheet(bytes, contentType));
