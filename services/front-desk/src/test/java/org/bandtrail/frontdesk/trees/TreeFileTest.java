package org.bandtrail.frontdesk.trees;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tree lists as spreadsheets write them. */
class TreeFileTest {

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16", "UTF-16LE", "windows-1252"})
    void letters_are_what_the_spreadsheet_showed(String charset) {
        String text = "Tag,Séction\n1,Mère\n";
        String written = charset.equals("UTF-16LE") ? "\uFEFF" + text : text;

        assertThat(TreeFile.text(written.getBytes(Charset.forName(charset)))).isEqualTo(text);
    }

    @Test
    void a_byte_order_mark_is_no_part_of_the_first_column() {
        byte[] marked = "\uFEFFTag,Girth\n".getBytes(StandardCharsets.UTF_8);

        assertThat(TreeFile.columns(TreeFile.text(marked))).containsExactly("Tag", "Girth");
    }

    @Test
    void columns_are_parted_by_comma_semicolon_or_tab() {
        assertThat(TreeFile.columns("Tag,Girth\n1,2\n")).containsExactly("Tag", "Girth");
        assertThat(TreeFile.columns("Tag;Girth;Kind, if known\n1;2;3\n"))
                .containsExactly("Tag", "Girth", "Kind, if known");
        assertThat(TreeFile.columns("Tag\tGirth\n1\t2\n")).containsExactly("Tag", "Girth");
        assertThat(TreeFile.columns("\"Tag, on the tree\",Girth,\"DBH\"\n"))
                .containsExactly("Tag, on the tree", "Girth", "DBH");
    }
}
