/** Steps, stiffnesses, tolerances and limits of the rocking scene. Lengths mm, times s, angles rad. */

/**
 * Angular frequency that the socket is given on its springs, all of them bearing, 1/s: its mass and inertia are chosen by
 * it. A seventh of what the update could follow at all; inertia has no part in where the socket rests.
 */
export const SOCKET_FREQUENCY = 280;

/** Damping of the socket, 1/s: twice the frequency of the movement it is making, within these bounds. */
export const LEAST_SOCKET_DAMPING = 4;
export const MOST_SOCKET_DAMPING = 600;

/** Acceleration that the compressive load alone would give the free ball, mm/s². */
export const BALL_ACCELERATION = 16_000;

/** The guide that holds the ball sideways: its spring, compressive loads per mm, and its damping as a part of the critical. */
export const GUIDE_STIFFNESS = 4;
export const GUIDE_DAMPING_RATIO = 0.8;

/** Time in which the guide meets what the socket pushes back with, s. */
export const GUIDE_CATCH_UP = 0.004;

/** The guide carries the ball from one rim to the other in this time at its fastest, s, and starts and stops softly. */
export const CROSSING_TIME = 0.9;
export const GUIDE_LAG = 0.05;

/** Time constant in which a changed load comes on, s: at a blow, it would pull a peg further than its weight does. */
export const LOAD_LAG = 0.08;

/** At rest: no place of the socket faster than this, mm/s … */
export const REST_RATE = 2e-4;
/** … the ball where it should be to this, mm, and the load and place asked for reached to this share … */
export const REST_OFFSET = 2e-4;
export const REST_SHARE = 1e-5;
/** … for this many steps in a row. */
export const REST_STEPS = 6;

/** A socket that has turned by this much, rad, has overturned; one that has moved this far along its bed, mm, slides. */
export const OVERTURNED_TURN = 0.08;
export const SLID_AWAY = 2;

/** Penetration left at the contact of ball and socket, mm. The ball is larger by as much. */
export const ROCKING_SLOP = 1e-4;
