// Whether a leader looks on: a switch that all pages of the course share for this visit.

const key = 'kettle-and-plate.leader';

export function leaderLooksOn(): boolean {
  try {
    return sessionStorage.getItem(key) === 'yes';
  } catch {
    return false; // storage may be forbidden; the switch then holds on its page alone
  }
}

export function setLeaderLooksOn(looks: boolean): void {
  try {
    sessionStorage.setItem(key, looks ? 'yes' : 'no');
  } catch {
    // storage may be forbidden
  }
}
