/** How long a one-time link can be used. Apart from the shapes, so that a browser needs no validator to say it. */
export const LINK_DAYS = 7;
