package org.firnline.app.run;

import java.io.IOException;
import java.io.InputStream;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.firnline.app.reading.ReviewedRuns;
import org.firnline.app.store.KeptDryers;
import org.firnline.app.store.KeptRun;
import org.firnline.app.store.KeptRuns;
import org.firnline.app.store.RawFile;
import org.firnline.app.store.RawFiles;
import org.firnline.logs.Log;
import org.firnline.logs.Reading;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.ModelAndView;

/** All runs, and the door through which logs come in. */
@Controller
class RunsPage {
  private static final HttpStatusCode NOT_READ = HttpStatus.UNPROCESSABLE_CONTENT;

  private final RawFiles files;
  private final KeptRuns runs;
  private final KeptDryers dryers;
  private final ReviewedRuns reviewed;
  private final RunRows rows;

  RunsPage(RawFiles files, KeptRuns runs, KeptDryers dryers, ReviewedRuns reviewed, RunRows rows) {
    this.files = files;
    this.runs = runs;
    this.dryers = dryers;
    this.reviewed = reviewed;
    this.rows = rows;
  }

  @GetMapping("/runs")
  String list(Model model) {
    fill(model);
    return "run/runs";
  }

  /** Keeps a log first, then reads it; what cannot be read stays kept. */
  @PostMapping("/runs")
  ModelAndView add(
      @RequestParam("log") MultipartFile upload, @RequestParam("dryer") long dryerId, Model model)
      throws IOException {
    if (upload.isEmpty()) {
      model.addAttribute("missing", true);
      return refused(model, dryerId);
    }
    RawFile file;
    try (InputStream content = upload.getInputStream()) {
      file = files.keep(content, nameOf(upload));
    }
    Optional<KeptRun> known = runs.findByLog(file.id());
    if (known.isPresent()) {
      return new ModelAndView("redirect:/runs/" + known.get().id());
    }
    Reading reading = reviewed.read(file);
    Optional<Log> log = reading.log();
    if (log.isEmpty()) {
      model.addAttribute("unread", new Unread(file, reading));
      return refused(model, dryerId);
    }
    Optional<Instant> started = log.filter(read -> read.basis().startKnown()).flatMap(Log::start);
    long id = runs.add(titleOf(file), dryerId, file.id(), started);
    reviewed.find(id);
    return new ModelAndView("redirect:/runs/" + id);
  }

  /**
   * A file that was kept and could not be read.
   *
   * @param file the kept file
   * @param reading why
   */
  record Unread(RawFile file, Reading reading) {}

  private ModelAndView refused(Model model, long dryerId) {
    fill(model);
    model.addAttribute("chosenDryer", dryerId);
    return new ModelAndView("run/runs", model.asMap(), NOT_READ);
  }

  private void fill(Model model) {
    model.addAttribute("rows", rows.list());
    model.addAttribute("dryers", dryers.list());
    List<RawFile> loose = files.listWithoutRun();
    model.addAttribute("loose", loose);
  }

  /** The last part of the name a browser sends, which some send with a path. */
  private static String nameOf(MultipartFile upload) {
    String sent = Optional.ofNullable(upload.getOriginalFilename()).orElse("log");
    String name = sent.substring(Math.max(sent.lastIndexOf('/'), sent.lastIndexOf('\\')) + 1);
    return name.isBlank() ? "log" : name.substring(0, Math.min(200, name.length()));
  }

  private static String titleOf(RawFile file) {
    String name = file.originalName();
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }
}
