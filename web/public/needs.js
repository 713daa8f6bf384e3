// Says what is missing where the page would else say "Opening…" for ever. A plain old script on purpose: it has to run where
// the page's own cannot.
(function () {
  var WAIT_MS = 5000;
  var isPlain = false;
  var isSpanish = /[?&]lang=es\b/.test(location.search);
  var words = isSpanish
    ? {
        old: "Este navegador no puede calcular la respuesta: a la página le hace falta WebAssembly. Ábrela en un navegador de los últimos tres años.",
        broken: "No ha llegado una parte de la página. Vuelve a cargarla.",
        slow: "Todavía está llegando. Si no cambia nada, vuelve a cargar la página o ábrela en otro navegador.",
      }
    : {
        old: "This browser cannot work out the answer: the page needs WebAssembly. Open it in a browser of the last three years.",
        broken: "A part of the page did not arrive. Load it again.",
        slow: "Still on its way. If nothing changes, load the page again, or open it in another browser.",
      };

  /** Which of the page's places stands, until the page's own scripts know. */
  function place() {
    if (document.querySelector("straight-answer-page:not(.starting)")) return;
    var isStart = location.hash === "" || location.hash === "#start";
    document.documentElement.setAttribute("data-place", isStart ? "start" : "");
  }

  /** Beside "Opening…", as long as that stands, and at the start; what is known first is known best. */
  function tell(what) {
    var isStart = document.documentElement.getAttribute("data-place") === "start";
    var opening = document.querySelector("straight-answer-page .opening");
    if (!opening || document.querySelector(".needs")) return;
    // What stands there for a page without any script is less than what is known here.
    if (isStart) opening = document.querySelector("#start");
    var late = opening.querySelector(".late");
    if (late) opening.removeChild(late);
    var line = opening.appendChild(document.createElement("p"));
    line.className = "needs";
    line.setAttribute("role", "status");
    line.textContent = words[what];
  }

  /** Whether the page's own scripts cannot run here. Nothing that an old browser lacks may be used to find out. */
  function isOld() {
    return !("noModule" in document.createElement("script")) || typeof WebAssembly !== "object";
  }

  if (document.documentElement.getAttribute("data-place") !== null) {
    place();
    window.addEventListener("hashchange", place);
  }
  /** In a frame without an origin a host has to allow modules; a plain script it need not. False where that is not why. */
  function takePlain() {
    if (window.origin !== "null" || isPlain) return false;
    isPlain = true;
    var sheet = document.createElement("link");
    sheet.rel = "stylesheet";
    sheet.href = "./plain.css";
    document.head.appendChild(sheet);
    var address = "./plain.js";
    var types = window.trustedTypes;
    if (types) {
      address = types
        .createPolicy("straight-answer-plain", {
          createScriptURL: function () {
            return "./plain.js";
          },
        })
        .createScriptURL("");
    }
    var script = document.createElement("script");
    script.src = address;
    document.head.appendChild(script);
    return true;
  }

  window.addEventListener(
    "error",
    function (event) {
      if (event.target && event.target.tagName === "SCRIPT" && !takePlain()) tell("broken");
    },
    true,
  );
  // The page's own scripts hold back the end of parsing, which is why nothing here waits for it save where they do not run.
  if (!isOld()) setTimeout(tell, WAIT_MS, "slow");
  else if (document.readyState === "loading") document.addEventListener("DOMContentLoaded", tell.bind(null, "old"));
  else tell("old");
})();
