// Keeps what is being entered in this browser tab, so that a lost connection or a reload loses nothing.

export function keep(key, text) {
  try {
    sessionStorage.setItem(key, text);
  } catch {
    // A full or forbidden store only means that nothing is kept.
  }
}

export function read(key) {
  try {
    return sessionStorage.getItem(key);
  } catch {
    return null;
  }
}

export function drop(key) {
  try {
    sessionStorage.removeItem(key);
  } catch {
    // Nothing was kept.
  }
}
