package org.bandtrail.frontdesk.pages;

import jakarta.servlet.http.HttpServletRequest;
import org.bandtrail.frontdesk.neighbours.NeighbourRefused;
import org.bandtrail.frontdesk.neighbours.NeighbourSilent;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.servlet.ModelAndView;

/** The pages for what went wrong between the front desk and a service. */
@ControllerAdvice
class ErrorPages {
    private static final Logger LOG = LoggerFactory.getLogger(ErrorPages.class);
    private final DeskAdvice advice;

    ErrorPages(DeskAdvice advice) {
        this.advice = advice;
    }

    @ExceptionHandler(NeighbourSilent.class)
    ModelAndView silent(NeighbourSilent silent, HttpServletRequest request) {
        LOG.warn("{} for {}: {}", silent.getMessage(), request.getRequestURI(), String.valueOf(silent.getCause()));
        ModelAndView page = page("silent", HttpStatus.SERVICE_UNAVAILABLE, request);
        page.addObject("neighbour", silent.neighbour());
        page.addObject("written", !request.getMethod().equals("GET"));
        return page;
    }

    @ExceptionHandler(NeighbourRefused.class)
    ModelAndView refused(NeighbourRefused refused, HttpServletRequest request) {
        ModelAndView page = page("refused", HttpStatusCode.valueOf(refused.status()), request);
        page.addObject("problem", refused.problem());
        page.addObject("reading", request.getMethod().equals("GET"));
        return page;
    }

    @ExceptionHandler({UnfitForm.class, java.time.format.DateTimeParseException.class})
    ModelAndView unfit(RuntimeException unfit, HttpServletRequest request) {
        ModelAndView page = page("refused", HttpStatus.UNPROCESSABLE_CONTENT, request);
        page.addObject(
                "problem", Entered.unfit("The form cannot be sent like this", String.valueOf(unfit.getMessage())));
        // What was asked cannot be read however often one looks again.
        page.addObject("reading", false);
        return page;
    }

    private ModelAndView page(String view, HttpStatusCode status, HttpServletRequest request) {
        ModelAndView page = new ModelAndView(view);
        page.setStatus(status);
        page.addObject("desk", advice.desk(request));
        return page;
    }
}
