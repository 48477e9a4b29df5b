/** Sent to the window when the cards go back to the start; a bench on them goes back with them. */
export const resetEvent = 'clinic-reset';
