// Whether a leader looks on, as a value that the entries of a page share.

export const leaderKey = 'leader';
