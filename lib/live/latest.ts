/**
 * Work that is asked for more often than it can be done: at most once a frame, never twice at a time, and always once more after
 * the last request.
 */
export function latest(work: () => Promise<void>): () => void {
  let asked = false;
  let busy = false;
  const next = async (): Promise<void> => {
    busy = true;
    while (asked) {
      asked = false;
      await work();
      await new Promise(requestAnimationFrame);
    }
    busy = false;
  };
  return () => {
    asked = true;
    if (!busy) {
      busy = true;
      requestAnimationFrame(() => void next());
    }
  };
}

/** Lets what the reader does come first. */
export function nextTask(): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, 0);
  });
}

/** Work that waits until nothing has asked for it for a while [ms]. */
export function afterPause(work: () => void, pause: number): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  return () => {
    clearTimeout(timer);
    timer = setTimeout(work, pause);
  };
}
