/** The page can be read before it comes to life: its script waits behind the first frame, which reading and running it would hold up. */

const app = new URL(APP, document.baseURI).href;
const live = () => void import(app);

if (document.hidden) live(); // no frame is drawn
else requestAnimationFrame(() => setTimeout(live));
