/** The event stream says every so often that it is there; a client that hears less has a dead one. */
export const BEAT_MS = 5000;
