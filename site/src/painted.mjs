/** When something to read has been painted: what is begun sooner shares the processor with the browser's own work, and holds it up. */

const LATEST = 1000; // milliseconds: a browser that tells of no paint is not waited for

/** Settled then; at once where no frame is drawn. @returns {Promise<void>} */
export function painted() {
  return new Promise((done) => {
    if (document.hidden) return done();
    setTimeout(done, LATEST);
    document.addEventListener("visibilitychange", () => done(), { once: true });
    if (told()) watch(done);
    else requestAnimationFrame(() => setTimeout(done));
  });
}

const told = () => PerformanceObserver.supportedEntryTypes.includes("paint");

/** @param {() => void} done */
function watch(done) {
  const observer = new PerformanceObserver((seen) => {
    if (!seen.getEntriesByName("first-contentful-paint").length) return;
    observer.disconnect();
    done();
  });
  observer.observe({ type: "paint", buffered: true });
}
