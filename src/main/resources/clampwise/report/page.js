(function () {
  'use strict';
  document.documentElement.classList.add('scripted');

  function all(root, selector) {
    return Array.prototype.slice.call(root.querySelectorAll(selector));
  }

  function unlight() {
    all(document, '.lit').forEach(function (lit) { lit.classList.remove('lit'); });
  }

  function wire(review) {
    var ids = review.dataset.ids;
    var findings = all(review, '.finding');
    var box = review.querySelector('.module-box');

    function marks(number) {
      return all(review, '.plan [data-finding="' + number + '"]');
    }

    function article(number) {
      return document.getElementById(ids + 'finding-' + number);
    }

    function light(number) {
      unlight();
      marks(number).forEach(function (mark) { mark.classList.add('lit'); });
      var shown = article(number);
      if (shown) { shown.classList.add('lit'); }
    }

    function filter() {
      var wanted = all(review, '[data-severity]:checked').map(function (b) { return b.dataset.severity; });
      var value = function (name) {
        var field = review.querySelector('[data-filter="' + name + '"]');
        return field ? field.value : '';
      };
      var words = value('words').toLowerCase();
      var shown = 0;
      findings.forEach(function (finding) {
        var fits = wanted.indexOf(finding.dataset.severity) >= 0
          && (!value('topic') || finding.dataset.topic === value('topic'))
          && (!value('place') || finding.dataset.place === value('place'))
          && (!words || finding.textContent.toLowerCase().indexOf(words) >= 0);
        finding.hidden = !fits;
        shown += fits ? 1 : 0;
        marks(finding.dataset.number).forEach(function (mark) {
          mark.style.display = fits ? '' : 'none';
        });
      });
      var output = review.querySelector('.shown');
      if (output) { output.textContent = shown + ' of ' + findings.length + ' shown'; }
    }

    function showFinding(number) {
      var shown = article(number);
      if (!shown) { return; }
      shown.hidden = false;
      light(number);
      shown.scrollIntoView({ block: 'start' });
      shown.focus({ preventScroll: true });
    }

    function showOnPlan(number) {
      var found = marks(number);
      light(number);
      var plan = found.length ? found[found.length - 1].closest('.sheet-box') : null;
      if (plan) {
        plan.scrollIntoView({ block: 'start' });
        plan.querySelector('.canvas').focus({ preventScroll: true });
      }
    }

    function showModule(module) {
      unlight();
      module.classList.add('lit');
      var name = module.dataset.module;
      var title = module.querySelector('title');
      box.textContent = '';
      var head = document.createElement('strong');
      head.textContent = title ? title.textContent : name;
      box.appendChild(head);
      var row = all(review, 'tr[data-module]').filter(function (r) { return r.dataset.module === name; })[0];
      var links = row ? all(row, 'a') : [];
      var text = document.createElement('p');
      text.textContent = links.length ? 'Findings: ' : 'No finding names this module.';
      links.forEach(function (link) {
        var number = link.textContent;
        var again = document.createElement('a');
        var shown = article(number);
        again.href = link.getAttribute('href');
        again.textContent = shown ? shown.querySelector('h3').textContent.trim() : number;
        text.appendChild(document.createElement('br'));
        text.appendChild(again);
      });
      box.appendChild(text);
    }

    all(review, '.filter input, .filter select').forEach(function (field) {
      field.addEventListener('input', filter);
      field.addEventListener('change', filter);
    });
    var form = review.querySelector('.filter');
    if (form) { form.addEventListener('submit', function (event) { event.preventDefault(); }); }
    filter();

    all(review, '.switches [data-layer]').forEach(function (field) {
      field.addEventListener('input', function () {
        var layers = [field.dataset.layer].concat(field.dataset.layer === 'zones' ? ['zone-borders'] : []);
        layers.forEach(function (layer) {
          all(review, '.plan .layer-' + layer).forEach(function (group) {
            group.style.display = field.checked ? '' : 'none';
          });
        });
      });
    });

    all(review, '.finding').forEach(function (finding) {
      var link = finding.querySelector('.to-plan');
      if (!marks(finding.dataset.number).length) { link.remove(); return; }
      link.addEventListener('click', function (event) {
        event.preventDefault();
        showOnPlan(finding.dataset.number);
      });
    });

    all(review, '.sheet-box').forEach(function (sheet) {
      var svg = sheet.querySelector('.plan');
      var canvas = sheet.querySelector('.canvas');
      var zoom = 1;
      function to(next) {
        var before = zoom;
        zoom = Math.min(12, Math.max(1, next));
        var x = canvas.scrollLeft + canvas.clientWidth / 2;
        var y = canvas.scrollTop + canvas.clientHeight / 2;
        svg.style.width = zoom === 1 ? '' : zoom * 100 + '%';
        svg.style.maxWidth = 'none';
        canvas.style.maxHeight = zoom === 1 ? '' : '80vh';
        canvas.scrollLeft = x * zoom / before - canvas.clientWidth / 2;
        canvas.scrollTop = y * zoom / before - canvas.clientHeight / 2;
      }
      sheet.querySelector('.zoom-in').addEventListener('click', function () { to(zoom * 1.5); });
      sheet.querySelector('.zoom-out').addEventListener('click', function () { to(zoom / 1.5); });
      sheet.querySelector('.zoom-all').addEventListener('click', function () { to(1); });
      canvas.addEventListener('keydown', function (event) {
        if (event.key === '+' || event.key === '=') { to(zoom * 1.5); event.preventDefault(); }
        if (event.key === '-') { to(zoom / 1.5); event.preventDefault(); }
      });
      svg.addEventListener('click', function (event) {
        var mark = event.target.closest('[data-finding]');
        var module = event.target.closest('[data-module]');
        if (mark) { showFinding(mark.dataset.finding); } else if (module) { showModule(module); }
      });
    });
  }

  all(document, '.review').forEach(wire);

  var opened = [];
  window.addEventListener('beforeprint', function () {
    opened = all(document, 'details.work:not([open])');
    opened.forEach(function (details) { details.open = true; });
  });
  window.addEventListener('afterprint', function () {
    opened.forEach(function (details) { details.open = false; });
  });
}());
