import { workerData } from 'node:worker_threads';
import { exposeRows, type RenderOrder } from './render.ts';

exposeRows(workerData as RenderOrder);
