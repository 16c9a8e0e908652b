/** How the desk looks: by day and by night, and how large its letters are. Sheets of style in, sheets of style out; nothing here knows a notebook. */
package org.calicograph.desk.look;
