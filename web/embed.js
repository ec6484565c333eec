"use strict";
// Defines <standing-beam>, the calculator as a part of another page. What
// stands inside the element, a link with a picture, is shown until the
// calculator is there, and for good where scripts are off or it cannot come.
{
  const here = document.currentScript ? new URL("../", document.currentScript.src) : undefined;
  const version = 1;
  const base = new CSSStyleSheet(); // too old a browser stops here and shows the picture
  base.replaceSync(`:host { display: block; position: relative; } :host([hidden]) { display: none; }
    iframe { display: block; width: 100%; min-height: 0; border: 0; }
    iframe.coming { position: absolute; inset: 0; height: 640px; visibility: hidden; pointer-events: none; }
    iframe:not(.coming) + slot { display: none; }`);
  // These attributes are HTML's or the element's own; all others are asked of the calculator.
  const own = /^(id|class|style|title|hidden|slot|part|dir|role|tabindex|nonce|from|data-.*|aria-.*|on.*)$/;

  class StandingBeam extends HTMLElement {
    #frame; #origin; #sent; #due; #answer = null; #ready = false;
    #fit = new CSSStyleSheet();
    #attributes = new MutationObserver(() => this.#ask());
    #hear = (event) => this.#heard(event);

    constructor() {
      super();
      this.attachShadow({ mode: "open" }).adoptedStyleSheets = [base, this.#fit];
      this.shadowRoot.append(document.createElement("slot"));
      if (Object.hasOwn(this, "wall")) { // set before this script had come
        const wall = this.wall;
        delete this.wall;
        this.wall = wall;
      }
    }

    connectedCallback() {
      const home = this.hasAttribute("from") ? new URL(this.getAttribute("from"), document.baseURI) : here;
      if (!home || !/^https?:$/.test(home.protocol)) { return; }
      this.#origin = home.origin;
      this.#sent = this.#wanted();
      this.#frame = document.createElement("iframe");
      this.#frame.className = "coming";
      this.#frame.title = this.title || this.getAttribute("aria-label") || "Standing Beam";
      this.#frame.referrerPolicy = "no-referrer";
      this.#frame.loading = "lazy";
      this.#frame.src = new URL("./#embed&" + this.#sent + "&host=" + encodeURIComponent(self.origin), home).href;
      addEventListener("message", this.#hear);
      this.#attributes.observe(this, { attributes: true });
      this.shadowRoot.prepend(this.#frame);
    }

    disconnectedCallback() {
      removeEventListener("message", this.#hear);
      this.#attributes.disconnect();
      this.#ready = false;
      this.#fit.replaceSync("");
      this.#frame?.remove();
    }

    // wall is the wall file of what is shown; a file or one wall of it can be set.
    get wall() { return this.#answer?.file ?? null; }
    set wall(wall) {
      this.#due = wall;
      if (this.#ready) { this.#sendDue(); }
    }

    // answer is the verdict with the two lines of the headline.
    get answer() { return this.#answer; }

    #wanted() {
      const query = new URLSearchParams();
      for (const { name, value } of this.attributes) {
        if (!own.test(name)) { query.set(name, value); }
      }
      const language = this.closest("[lang]")?.lang;
      if (language && !query.has("lang")) { query.set("lang", language); }
      return query.toString();
    }

    #ask() {
      const wanted = this.#wanted();
      if (!this.#ready || wanted === this.#sent) { return; }
      this.#sent = wanted;
      this.#say({ asks: "set", as: wanted });
    }

    #sendDue() {
      const wall = this.#due;
      this.#due = undefined;
      if (wall === undefined || wall === null) { return; }
      const file = typeof wall === "string" ? wall : JSON.stringify(wall.walls ? wall : { format: 1, walls: [wall] });
      this.#say({ asks: "wall", file });
    }

    #say(message) {
      this.#frame.contentWindow?.postMessage(JSON.stringify({ "standing-beam": version, ...message }), this.#origin);
    }

    // #heard takes a message of our own frame, from the calculator's origin, of
    // this version and shape. All others are somebody else's.
    #heard(event) {
      if (event.source !== this.#frame.contentWindow || event.origin !== this.#origin || typeof event.data !== "string") { return; }
      let m;
      try { m = JSON.parse(event.data); } catch { return; }
      if (m?.["standing-beam"] !== version) { return; }
      if (Number.isInteger(m.height) && m.height > 0 && m.height < 50000) {
        // A greatest height that the page around sets lets the frame scroll.
        this.#fit.replaceSync(`:host(:not([hidden])) { display: flex; flex-direction: column; } iframe { flex: 0 1 ${m.height}px; }`);
      }
      if (Array.isArray(m.what)) { console.warn("standing-beam:", m.what.filter((line) => typeof line === "string").join(" ")); }
      if (m.says === "ready") { this.#begin(); }
      if (typeof m.answer?.verdict === "string") { this.#answer = m.answer; }
      if (m.says === "ready" || m.says === "change") {
        this.dispatchEvent(new CustomEvent(m.says, { detail: this.#answer }));
      }
    }

    #begin() {
      this.#ready = true;
      this.#frame.className = "";
      this.#due ??= this.#answer?.file; // the frame has begun anew
      this.#ask();
      this.#sendDue();
    }
  }
  if (!customElements.get("standing-beam")) { customElements.define("standing-beam", StandingBeam); }
}
