// A page behind WebDriver, with the names that playwright-core has for it, as far as the journeys need them: so the
// steps of tests/browser serve here as well, in browsers that playwright-core does not drive.

import assert from "node:assert/strict";
import { createRequire } from "node:module";
import { siteUrl } from "../browser/harness.mjs";

const fromWeb = createRequire(new URL("../../web/package.json", import.meta.url));
const { Key } = fromWeb("selenium-webdriver");

const PATIENCE = 20_000;
const KEYS = {
  Enter: Key.ENTER,
  Tab: Key.TAB,
  ArrowRight: Key.ARROW_RIGHT,
  ArrowLeft: Key.ARROW_LEFT,
  Home: Key.HOME,
  End: Key.END,
};
const ROLES = {
  button: "button, [role=button]",
  link: "a[href]",
  slider: "input[type=range], [role=slider]",
  checkbox: "input[type=checkbox]",
};

/** Runs in the page: the elements that a chain of steps leads to. */
function reached(steps) {
  const plain = (text) => text.replace(/\s+/g, " ").trim();
  const fits = (text, { said, exact }) => {
    if (said.source !== undefined) return new RegExp(said.source, said.flags).test(text);
    return exact ? plain(text) === plain(said) : plain(text).toLowerCase().includes(plain(said).toLowerCase());
  };
  const names = (element) => {
    const own = element.getAttribute("aria-label");
    if (own !== null) return [own];
    const by = (element.getAttribute("aria-labelledby") ?? "").split(" ").map((id) => document.getElementById(id));
    const labels = [...by, ...(element.labels ?? [])].filter(Boolean);
    return (labels.length > 0 ? labels : [element]).map((one) => one.textContent);
  };
  const kept = {
    text: (element, step) => fits(element.textContent, step),
    name: (element, step) => names(element).some((name) => fits(name, step)),
    // The innermost only, and none that is not for reading.
    innermost: (element, step) =>
      element.checkVisibility() &&
      fits(element.innerText ?? "", step) &&
      ![...element.children].some((child) => fits(child.innerText ?? "", step)),
  };
  return steps.reduce(
    (found, step) => {
      if (step.nth !== undefined) return found.slice(step.nth).slice(0, 1);
      const inside = found.flatMap((root) => [...root.querySelectorAll(step.css)]);
      return step.by ? inside.filter((element) => kept[step.by](element, step)) : inside;
    },
    [document],
  );
}

/** Runs in the page: notes on what the next click falls, and stops one that falls beside the element. */
function watchClick(element) {
  window.clickFell = "";
  const look = (event) => {
    const hit = event.composedPath().includes(element);
    window.clickFell = hit ? "on it" : "beside";
    if (hit) return;
    event.preventDefault();
    event.stopImmediatePropagation();
  };
  addEventListener("click", look, { capture: true, once: true });
}

/** What fails when the page moved under an act; the act is done again. */
const MOVED = new Set([
  "ElementNotInteractableError",
  "StaleElementReferenceError",
  "ElementClickInterceptedError",
  "ClickFellBeside",
]);

const sent = (said) => (said instanceof RegExp ? { source: said.source, flags: said.flags } : said);

class Locator {
  constructor(page, steps) {
    this.page = page;
    this.steps = steps;
  }

  with(...steps) {
    return new Locator(this.page, [...this.steps, ...steps]);
  }

  locator(css, { hasText } = {}) {
    return this.with(hasText === undefined ? { css } : { css, by: "text", said: sent(hasText) });
  }

  getByRole(role, { name, exact = false }) {
    return this.with({ css: ROLES[role], by: "name", said: sent(name), exact });
  }

  getByLabel(said, { exact = false } = {}) {
    return this.with({ css: "input, select, textarea, [role=slider]", by: "name", said: sent(said), exact });
  }

  getByText(said) {
    return this.with({ css: "*", by: "innermost", said: sent(said) });
  }

  nth(nth) {
    return this.with({ nth });
  }

  first() {
    return this.nth(0);
  }

  /** Every element as it stands now, through a function of the page. */
  all(of) {
    return this.page.script(`return (${reached})(arguments[0]).map(${of})`, this.steps);
  }

  count = async () => (await this.all((element) => element.tagName)).length;
  allInnerTexts = () => this.all((element) => element.innerText ?? element.textContent);

  /** The one element, waited for until it is on view. */
  async element({ hidden = false } = {}) {
    return this.page.wait(`one of ${JSON.stringify(this.steps)}`, async () => {
      const found = await this.page.script(
        `const found = (${reached})(arguments[0]).filter((one) => arguments[1] || one.checkVisibility());
         return found.length > 1 ? found.length : found[0]`,
        this.steps,
        hidden,
      );
      assert.ok(typeof found !== "number", `${found} of ${JSON.stringify(this.steps)}`);
      return found;
    });
  }

  async waitFor({ state = "visible" } = {}) {
    if (state === "visible") await this.element();
    else await this.page.wait(`none of ${JSON.stringify(this.steps)}`, async () => (await this.count()) === 0);
  }

  /** Acts on the element; again, when the page drew it anew or moved it between finding and acting. */
  async whenStill(act) {
    return this.page
      .wait(`${JSON.stringify(this.steps)} to stand still`, async () => {
        try {
          return { did: await act() };
        } catch (failed) {
          if (!MOVED.has(failed.name)) throw failed;
          return false;
        }
      })
      .then(({ did }) => did);
  }

  on(act, ...args) {
    return this.whenStill(async () => this.page.script(`return (${act})(...arguments)`, await this.element(), ...args));
  }

  innerText = () => this.on((element) => element.innerText);
  inputValue = () => this.on((element) => element.value);
  getAttribute = (name) => this.on((element, name) => element.getAttribute(name), name);
  focus = () => this.on((element) => element.focus());
  isChecked = () => this.on((element) => element.checked);

  evaluate(act, ...args) {
    return this.on(act, ...args);
  }

  /** The element in the middle of the window; a driver's own scrolling may still glide when it looks. */
  async inView() {
    const element = await this.element();
    await this.page.script("arguments[0].scrollIntoView({ block: 'center', behavior: 'instant' })", element);
    return element;
  }

  /**
   * Clicks the element. A driver looks where it lies and clicks there a moment later: what is drawn above it meanwhile
   * moves it away, and the click falls on something else. Such a click is caught before it does anything.
   */
  click() {
    return this.whenStill(async () => {
      const element = await this.inView();
      await this.page.script(`(${watchClick})(arguments[0])`, element);
      await element.click();
      const fell = await this.page.wait("a click to arrive", () =>
        this.page.script("return window.clickFell ?? 'elsewhere'"),
      );
      if (fell === "beside") throw Object.assign(new Error("the click fell beside"), { name: "ClickFellBeside" });
    });
  }

  fill(text) {
    return this.whenStill(async () => {
      const element = await this.element();
      await element.clear();
      await element.sendKeys(text);
    });
  }

  press(key) {
    return this.whenStill(async () => (await this.element()).sendKeys(KEYS[key] ?? key));
  }

  /** Chooses the option with this value. */
  async selectOption(value) {
    const element = await this.inView();
    const option = await this.page.script(
      "return [...arguments[0].options].find((one) => one.value === arguments[1])",
      element,
      value,
    );
    assert.ok(option, `an option ${value}`);
    await option.click();
  }

  async setInputFiles(path) {
    await (await this.element({ hidden: true })).sendKeys(path);
  }
}

export class Page extends Locator {
  constructor(driver, name) {
    super(null, []);
    this.page = this;
    this.driver = driver;
    this.browserName = name;
    this.keyboard = {
      press: (key) =>
        driver
          .actions()
          .sendKeys(KEYS[key] ?? key)
          .perform(),
      type: (text) => driver.actions().sendKeys(text).perform(),
    };
  }

  script(text, ...args) {
    return this.driver.executeScript(text, ...args);
  }

  evaluate(act, arg) {
    return this.script(`return (${act})(arguments[0])`, arg);
  }

  async wait(what, asked) {
    const end = Date.now() + PATIENCE;
    for (;;) {
      const said = await asked();
      if (said) return said;
      assert.ok(Date.now() < end, `${this.browserName} waited in vain for ${what}`);
      await new Promise((later) => setTimeout(later, 50));
    }
  }

  waitForFunction(act, arg) {
    return this.wait(String(act), () => this.evaluate(act, arg));
  }

  /** Puts text on the clipboard, by the keys for it on an empty page. */
  async copy(text) {
    await this.home();
    await this.evaluate((text) => {
      document.body.append(Object.assign(document.createElement("textarea"), { value: text }));
      document.querySelector("textarea").select();
    }, text);
    await this.chord("c");
  }

  /** What is on the clipboard, by the keys for it. */
  async paste(css) {
    await this.locator(css).focus();
    await this.chord("v");
  }

  chord(key) {
    return this.driver.actions().keyDown(Key.CONTROL).sendKeys(key).keyUp(Key.CONTROL).perform();
  }

  /** A window whose page is this large. */
  async size(width, height) {
    const window = this.driver.manage().window();
    await window.setRect({ width, height });
    const inner = await this.evaluate(() => [innerWidth, innerHeight]);
    await window.setRect({ width: 2 * width - inner[0], height: 2 * height - inner[1] });
  }

  home() {
    return this.driver.get("about:blank");
  }

  /** Opens an address as one that comes from elsewhere does, and writes down what the page must not do from then on. */
  async goto(address) {
    await this.home();
    await this.driver.get(address);
    await this.evaluate(() => {
      window.complaints = [];
      const complain = (event) =>
        window.complaints.push(String(event.reason ?? event.message ?? event.violatedDirective));
      for (const type of ["error", "unhandledrejection", "securitypolicyviolation"]) addEventListener(type, complain);
    });
  }

  open(rest = "") {
    return this.goto(siteUrl + rest);
  }

  url = () => this.driver.getCurrentUrl();

  /** Fails when the page asked anyone but the site, or complained. */
  async assertQuiet() {
    const { complaints, asked } = await this.evaluate(() => ({
      complaints: window.complaints,
      asked: performance.getEntriesByType("resource").map(({ name }) => name),
    }));
    const { origin } = new URL(siteUrl);
    assert.deepEqual(
      asked.filter((url) => /^https?:/.test(url) && new URL(url).origin !== origin),
      [],
      "requests left the origin",
    );
    assert.deepEqual(complaints, [], "the page complained");
  }
}
