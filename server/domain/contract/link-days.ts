/** How long links can be used, in days. Apart from the shapes, so that a browser needs no validator to say it. */
export const LINK_DAYS = { usual: 7, choices: [1, 7, 30], most: 30 } as const;
export const GUEST_DAYS = { usual: 30, choices: [7, 30, 90], most: 90 } as const;
export const PASSWORD_LINK_DAYS = 1;
