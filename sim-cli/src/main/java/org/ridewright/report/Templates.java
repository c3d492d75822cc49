package org.ridewright.report;

import freemarker.core.HTMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.ridewright.figure.Figure;
import org.ridewright.figure.FigureFiles;

/** Fills the templates of pages; every text is escaped, drawings are not. */
public final class Templates {
    private Templates() {}

    /** The page of a template beside this class. */
    public static String render(String name, Map<String, Object> model) {
        StringWriter out = new StringWriter();
        try {
            template(name).process(model, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (TemplateException e) {
            throw new IllegalStateException("the page could not be made: " + e.getMessage(), e);
        }
        return out.toString();
    }

    /** Groups of figures with their drawings, as the macro {@code figures} takes them; a figure that was not drawn is left out. */
    static List<Map<String, Object>> groups(List<FigureGroup> wanted, List<FigureFiles> drawn) {
        List<Map<String, Object>> groups = new ArrayList<>();
        for (FigureGroup group : wanted) {
            List<Map<String, String>> figures = figures(group, drawn);
            if (!figures.isEmpty()) {
                groups.add(Map.of("heading", group.heading(), "figures", figures));
            }
        }
        return groups;
    }

    /** The figures of a group that were drawn, as the macro {@code drawings} takes them. */
    static List<Map<String, String>> figures(FigureGroup group, List<FigureFiles> drawn) {
        Map<String, String> drawings = new HashMap<>();
        drawn.forEach(f -> drawings.put(f.fileName(), f.svg()));
        List<Map<String, String>> figures = new ArrayList<>();
        for (Figure figure : group.figures()) {
            if (drawings.containsKey(figure.fileName())) {
                figures.add(Map.of(
                        "svg",
                        drawings.get(figure.fileName()),
                        "caption",
                        Unbroken.of(figure.caption()),
                        "file",
                        figure.fileName()));
            }
        }
        return figures;
    }

    private static Template template(String name) throws IOException {
        Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
        configuration.setClassForTemplateLoading(Templates.class, "");
        configuration.setDefaultEncoding("UTF-8");
        configuration.setLocale(Locale.ROOT);
        configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        return configuration.getTemplate(name);
    }
}
