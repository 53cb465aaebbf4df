/** Why there is no fixing where nobody knows what the wall is, and what would get the piece up. */
export const UNKNOWN_WALL = {
  because: 'What this wall is made of is not known, so no fixing can be worked out.',
  clears: 'Find out what the wall is: knock on it, look at the dust of an old hole, tell me how old it is.',
};
