import { tasks } from '../../src/app/off-thread/tasks.ts';

/** In Node the worker has no file that a page could read: what it works by is given here. */
globalThis.tasksHere = tasks;
